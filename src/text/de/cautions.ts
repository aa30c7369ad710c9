import { type CautionName, type CautionPlace, cautionPlaces } from "../cautions";

export { type CautionName, type CautionPlace, cautionPlaces } from "../cautions";

interface Caution {
  readonly short: string;
  readonly long: string;
}

const labels = "Beachten Sie die örtlichen Vorschriften und die Angaben des Herstellers.";

const cautions = {
  consent: {
    short: "Erst fragen, und aufhören, wenn die Person es sagt.",
    long: "Sagen Sie, wo das Maßband angelegt wird. Die Person darf allein messen und jede Zahl weglassen. Kinder und Jugendliche werden nur gemessen, wenn ein Elternteil oder Vormund dabei ist.",
  },
  clothes: {
    short: "Keine Stecknadeln in Kleidung, die jemand trägt.",
    long: "Markieren Sie die Unterwäsche mit Aufklebern, auswaschbarem Stift, Klammern oder schmalem Gummiband. Eine geschlossene Sicherheitsnadel geht nur durch den Stoff, nie bis auf die Haut.",
  },
  standing: {
    short: "Nach jeder Gruppe von Maßen hinsetzen.",
    long: "Niemand steht länger als etwa zehn Minuten still. Wer nicht lange stehen kann: vom Nacken abwärts messen und dazwischen sitzen.",
  },
  allergy: {
    short: "Nach Latex und Nickel fragen.",
    long: "Gummiband kann Latex enthalten, Nadeln und Klammern können Nickel enthalten. Baumwollband und Klammern aus Kunststoff tun es ebenso.",
  },
  health: {
    short: "Prothese, Orthese: anlassen. Schwangerschaft, Operation: ärztlich nachfragen.",
    long: "Vor dem Messen nahe einer frischen Operation oder in der Schwangerschaft wird ärztlicher Rat eingeholt. Drücken Sie dort nicht, und messen Sie wieder, wenn sich etwas ändert. Für die Passform fragt man eine Fachkraft, für den Körper Ärztin oder Arzt.",
  },
  base: {
    short: "Den Ständer feststellen und beschweren.",
    long: "Eine gepolsterte Büste ist oben schwer. Stellen Sie Höhe und Rollen fest, und beschweren oder verbreitern Sie den Ständer, vor allem, wo Kinder oder Tiere sind.",
  },
  lifting: {
    short: "Eine schwere Büste heben zwei zusammen.",
    long: "Zwei setzen sie auch ab; oder der Rumpf wird zuerst vom Ständer genommen. Fassen Sie sie am Ständer und an der nackten Büste, nie am Polster.",
  },
  blades: {
    short: "Von der Hand weg schneiden.",
    long: `Schließen oder sichern Sie eine Klinge, sooft Sie sie weglegen, und stecken Sie Nadeln zurück ins Nadelkissen. ${labels}`,
  },
  dust: {
    short: "Eine Staubmaske tragen.",
    long: `Vlies verliert Fasern. Öffnen Sie ein Fenster, wischen Sie, statt auszuschütteln, und lassen Sie niemanden mit Asthma zuschneiden. ${labels}`,
  },
  shears: {
    short: "Flach liegend schneiden, die Finger weg von der Klinge.",
    long: `Schließen Sie die Schere oder sichern Sie den Rollschneider, sooft Sie sie weglegen, und legen Sie eine Matte unter. ${labels}`,
  },
  pinsIn: {
    short: "Die Nadeln abzählen, keine zwischen die Lippen.",
    long: "Nehmen Sie Nadeln mit Kopf aus einer Schale und schreiben Sie die Zahl auf. Ebenso viele kommen wieder heraus, wenn das Polster geheftet ist.",
  },
  pinsDropped: {
    short: "Eine gefallene Nadel sofort suchen.",
    long: "Halten Sie einen Magneten bereit. Kinder und Tiere bleiben draußen, bis der Boden abgesucht ist.",
  },
  pinsOut: {
    short: "Die herausgezogenen Nadeln zählen. Fehlt eine: aufhören.",
    long: "Suchen Sie den Boden ab, fahren Sie mit einem Magneten über das Polster und drücken Sie sanft auf die Stelle. Machen Sie nicht weiter, bis sie gefunden ist.",
  },
  iron: {
    short: "Kein Bügeleisen an die Büste: Polyester schmilzt.",
    long: `Bügeln Sie Genähtes, bevor es auf die Büste kommt, und erst, wenn keine Stecknadel und keine Nähnadel mehr darin ist. ${labels}`,
  },
  needles: {
    short: "Auch die Nähnadeln zählen.",
    long: "Eine gebogene Nadel bleibt leicht im Polster stecken. Sehen Sie jede Naht durch, bevor die Büste bewegt oder etwas gebügelt wird.",
  },
  fiber: {
    short: "Lose Fasern: eine Staubmaske tragen.",
    long: `Lose Füllwatte fliegt beim Auseinanderzupfen. Öffnen Sie ein Fenster, halten Sie sie von Flammen und Heizkörpern fern, und lassen Sie niemanden mit Asthma füllen. ${labels}`,
  },
  glue: {
    short: "Kein Sprühkleber im Zimmer: lieber heften.",
    long: `Er wird eingeatmet, er brennt, und sein Lösungsmittel zersetzt Schaumstoff. Stiche halten ebenso gut und lassen sich wieder lösen. ${labels}`,
  },
} as const satisfies { readonly [name in CautionName]: Caution };

export const cautionsAt = (place: CautionPlace): readonly Caution[] =>
  cautionPlaces[place].map((name) => cautions[name]);

export const shortCautions = (place: CautionPlace): string =>
  cautionsAt(place)
    .map(({ short }) => short)
    .join(" ");

/** Their short forms in one line. */
export const shortOf = (names: readonly CautionName[]): string => names.map((name) => cautions[name].short).join(" ");

export const cautionTitle = "Mit Vorsicht";
