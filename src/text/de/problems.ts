import type { MeasurementProblem } from "../../core/body/plausibility";
import type { BattingProblem } from "../../core/checkBatting";
import { type LengthProblem, type LengthStep, type LengthUnit, lengthSteps } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import type { FilePath, FittingProblem, PieceProblem } from "../../document/fittingProblem";
import { battingName } from "./grammar/battingName";
import { listed } from "./grammar/listed";
import { measurementInSentence } from "./measurements";
import { thinText } from "./thinText";
import { writtenLength } from "./writtenLength";

export function lengthProblemText(problem: LengthProblem, step: LengthStep): string {
  const example = `zum Beispiel ${examples[problem.unit]}`;
  switch (problem.code) {
    case "empty":
      return `Es ist nichts eingetippt. Tippen Sie eine Länge, ${example}.`;
    case "notALength":
      return `„${problem.read}“ lässt sich nicht als Länge lesen. Tippen Sie eine Zahl, ${example}.`;
    case "badFraction":
      return `Der Bruch in „${problem.read}“ lässt sich nicht lesen. Tippen Sie einen echten Bruch, zum Beispiel 34 3/4.`;
    case "notPositive":
      return `„${problem.read}“ ist nicht mehr als null. Tippen Sie, was das Maßband zeigt, ${example}.`;
    case "unknownUnit":
      return `„${problem.unitRead}“ ist keine Einheit, die hier gelesen wird. Nehmen Sie in, cm oder mm, ${example}.`;
    case "tooLong":
      return `„${problem.read}“ ist länger als jedes Maßband; das Höchste ist ${writtenLength(problem.longest, step)}. Prüfen Sie die Einheit.`;
    case "ambiguous":
      return `„${problem.read}“ kann ${exactly(problem.either)} oder ${exactly(problem.or)} heißen. Tippen Sie es ohne das Zeichen oder in einer anderen Einheit.`;
  }
}

const examples: { readonly [unit in LengthUnit]: string } = { in: "34 3/4", cm: "88,5", mm: "885" };

/** Without a mark between thousands, since that is what was in doubt. */
const exactly = (length: Millimetres): string => `${String(length).replace(".", ",")} mm`;

/** The person's or the form's, before the names of the measurements: no article, so that every name fits. */
export function measurementProblemText(problem: MeasurementProblem, step: LengthStep): string {
  const names = problem.names.map(measurementInSentence);
  const [first = "", second = ""] = names;
  const last = names.at(-1) ?? "";
  const whose = problem.whose === "body" ? "Person" : "Büste";
  if (problem.code === "missing") return `${whose}, ${first}: Dieses Maß fehlt. Messen Sie es: Damit beginnt der Plan.`;
  if (problem.code === "notALength") {
    return `${whose}, ${first}: ${problem.got} ist keine Länge. Tippen Sie, was das Maßband zeigt, zum Beispiel ${examples[lengthSteps[step].unit]}.`;
  }
  const length = (value: Millimetres): string => writtenLength(value, step);
  const got = length(problem.got);
  const { most } = problem.expected;
  const alone = `${whose}, ${first}: ${got}.`;
  const both = `${whose}, ${first} und ${second}: ${got}`;
  const inUnit = `${whose}, ${listed(names)}: ${got}${names.length > 1 ? " und so weiter" : ""}.`;
  const maybe = "ein Versehen bei der Einheit oder mit dem Maßband aus; zeigt das Maßband es wieder, stimmt es.";
  switch (problem.code) {
    case "impossible":
      return `${alone} Das kann kein Maßband dort zeigen. Prüfen Sie die Einheit, und messen Sie noch einmal.`;
    case "inchesAsCentimetres":
      return `${inUnit} Das sieht nach Zoll aus, die als Zentimeter eingetippt sind. Wählen Sie die Einheit, oder messen Sie noch einmal.`;
    case "centimetresAsInches":
      return `${inUnit} Das sieht nach Zentimetern aus, die als Zoll eingetippt sind. Wählen Sie die Einheit, oder messen Sie noch einmal.`;
    case "arcNotShorterThanGirth":
      return `${alone} Das ist nicht weniger als das Maß rundum (${second}); höchstens ${length(most)} sind möglich. Messen Sie beides noch einmal.`;
    case "arcDoesNotFitGirth":
      return `${alone} Das passt nicht zum Maß rundum (${second}). Prüfen Sie beide Markierungen an den Seiten, und messen Sie beides noch einmal.`;
    case "arcsMissGirth":
      return `${whose}, ${listed(names.slice(0, -1))}: zusammen ${got}. Das passt nicht zum Maß rundum (${last}). Prüfen Sie beide Markierungen an den Seiten, und messen Sie alle drei noch einmal.`;
    case "quartersMissArc":
      return `${both} zusammen. Das passt nicht zum ganzen Maß (${last}). Prüfen Sie die Markierung in der Mitte, und messen Sie alle drei noch einmal.`;
    case "breadthDoesNotFitGirth":
      return `${alone} Das passt nicht zum Maß rundum (${second}). Messen Sie gerade hindurch, nicht vorn herum.`;
    case "bustNotAboveWaist":
      return `${whose}: Nach ${first} liegt die Brust ${got} unter dem Nacken, nach ${second} die Taille ${length(most)}. Die Brust muss höher liegen. Messen Sie beides noch einmal.`;
    case "highHipNotAboveFullHip":
      return `${alone} Das ist nicht weniger als ${length(most)} (${second}). Messen Sie beides noch einmal vom Taillengummi aus.`;
    case "heightDoesNotFitNape":
      return `${whose}: Nach ${first} und ${second} liegt die Linie ${got} unter dem Nacken, wo sie nicht liegen kann. Messen Sie beides noch einmal über demselben Boden.`;
    case "linesOutOfOrder":
      return `${whose}: Nach ${first} liegt die Linie ${got} unter dem Nacken, und damit nicht unter der anderen (${second}). Messen Sie beides noch einmal.`;
    case "heightWithoutNape":
      return `Bitte prüfen: ${whose}, ${first} fehlt neben einer Höhe von ${got}. So sähe ein Abstand unter dem Nacken aus, der als Höhe eingetippt ist; stimmt sie, messen Sie den Nacken über demselben Boden, denn ohne ihn wird keine Höhe benutzt.`;
    case "linesClose":
      return `Bitte prüfen: ${whose}, ${first} und ${second} legen zwei Linien nur ${got} auseinander. So sähe eine Höhe aus, die bei der falschen Linie eingetippt ist; zeigt das Maßband es wieder, stimmt es.`;
    case "heightsDisagree":
      return `Bitte prüfen: ${whose}, nach ${first} liegt die Linie ${got} unter dem Nacken, nach ${second} anderswo. So sähe ein Versehen bei einem der beiden aus; zeigt das Maßband beides wieder, stimmt es, und das erste zählt.`;
    case "unusual":
      return `Bitte prüfen: ${alone} So sähe ${maybe}`;
    case "unusualProportion":
      return `Bitte prüfen: ${alone} Neben dem anderen Maß (${second}) sähe so ${maybe}`;
    case "unusualFrontShare":
      return `Bitte prüfen: ${alone} Neben dem anderen Maß (${second}) sähen so Markierungen aus, die nicht senkrecht unter der Achsel sitzen; zeigt das Maßband es wieder, stimmt es.`;
    case "unevenSides":
      return `Bitte prüfen: ${both} Unterschied. So sähe eine verschobene Markierung der Mitte aus; zeigt das Maßband es wieder, stimmt es, denn Seiten sind verschieden.`;
  }
}

export function battingProblemText({ batting, got, least, most }: BattingProblem, step: LengthStep): string {
  const { unit } = lengthSteps[step];
  const bound = got > most ? `höchstens ${thinText(most, unit)}` : `mindestens ${thinText(least, unit)}`;
  const what = batting === "" ? "dem Vlies" : `„${battingName(batting)}“`;
  return `Für eine Lage von ${what} sind ${thinText(got, unit)} angegeben; unter straffem Maßband ist eine Lage ${bound} dick. Prüfen Sie die Einheit, zum Beispiel ${unit === "in" ? "1/4 in" : "6 mm"}.`;
}

export function fittingProblemText(problem: FittingProblem, step: LengthStep): string {
  const at = problem.path.length === 0 ? "Die Datei" : pathText(problem.path);
  switch (problem.code) {
    case "notJson":
      return "Diese Datei ist keine Anprobe, oder ein Teil davon fehlt. Öffnen Sie die Datei, die hier gespeichert wurde; in einer von Hand geschriebenen suchen Sie nach einem fehlenden Komma, Anführungszeichen oder einer Klammer.";
    case "tooLarge":
      return `Die Datei enthält mehr, als eine Anprobe fassen kann: höchstens ${problem.most} ${limitWords[problem.what]}.`;
    case "newerVersion":
      return `Die Datei hat Version ${problem.got}; hier werden Versionen bis ${problem.newest} gelesen. Öffnen Sie sie mit einem neueren Padwright.`;
    case "missing":
      return `${at}: „${problem.key}“ fehlt. Ergänzen Sie es.`;
    case "unknownKey":
      return `${at}: „${problem.key}“ ist hier unbekannt.${problem.nearest === null ? " Nehmen Sie es heraus, oder berichtigen Sie es." : ` Meinten Sie „${problem.nearest}“?`}`;
    case "wrongKind":
      return `${at}: Da steht ${kindText(problem.got)}; erwartet wird ${listed(problem.expected.map(kindText), "oder")}.`;
    case "notAllowed":
      return `${at}: Da steht „${problem.got}“; erwartet wird ${quoted(problem.expected)}.`;
    case "outOfRange":
      return `${at}: „${problem.got}“ ist zu ${problem.side === "atMost" ? "viel" : "wenig"}; möglich ist ${problem.side === "atMost" ? "höchstens" : "mindestens"} ${problem.limit}.`;
    case "tooFew":
      return `${at}: Darin steht ${problem.got === 0 ? "nichts" : `nur ${problem.got}`}; nötig ist mindestens ${problem.least}. Nehmen Sie das Polster aus der Datei.`;
    case "tooMany":
      return `${at}: Darin steht ${problem.got}; möglich ist höchstens ${problem.most}.`;
    case "impossiblePiece":
      return `${at}: ${pieceProblemText(problem.problem)} Nehmen Sie das Polster aus der Datei, oder berichtigen Sie es.`;
    case "piecesAtOnce":
      return `${at}: Damit sind mehr als ${problem.most} Polster zugleich auf der Büste. Nehmen Sie Polster aus der Datei.`;
    case "unreadableLength":
      return `${at}: ${lengthProblemText(problem.problem, step)}`;
    case "sizeWithoutTable":
      return `${at}: Da steht „${problem.got}“, aber keine Größentabelle ist genannt. Ergänzen Sie „table“, zum Beispiel „misses“.`;
    case "unknownTable":
      return `${at}: Da steht „${problem.got}“; bekannt sind die Größentabellen ${quoted(problem.expected)}.`;
    case "unknownSize":
      return `${at}: Da steht „${problem.got}“; diese Größentabelle hat die Größen ${problem.expected.join(", ")}.`;
    case "tableLacks":
      return `In der Größentabelle „${problem.got}“ fehlt: ${listed(problem.names.map(measurementInSentence))}. Messen Sie es an der Büste und ergänzen Sie es.`;
  }
}

const quoted = (names: readonly string[]): string =>
  listed(
    names.map((name) => `„${name}“`),
    "oder",
  );

function pieceProblemText(problem: PieceProblem): string {
  return problem.is === "order"
    ? `Eine Zeile liegt bei ${problem.at} mm, die davor bei ${problem.above} mm; jede muss tiefer liegen als die davor.`
    : `Eine Zeile beginnt bei ${problem.start} mm und endet bei ${problem.end} mm; sie darf nicht enden, bevor sie beginnt.`;
}

const pathText = (path: FilePath): string =>
  path.map((step, i) => (typeof step === "number" ? `[${step}]` : i === 0 ? step : `.${step}`)).join("");

export const limitWords = {
  characters: "Zeichen Text",
  depth: "Ebenen ineinander",
  values: "Werte",
  names: "Schlüssel in einer Gruppe",
} as const;

const kindWords: { readonly [kind: string]: string } = {
  object: "eine Gruppe von Schlüsseln in Klammern",
  record: "eine Gruppe von Schlüsseln in Klammern",
  array: "eine Liste",
  string: "ein Text",
  number: "eine Zahl",
  boolean: "wahr oder falsch (true, false)",
  null: "nichts (null)",
  undefined: "nichts",
};
const kindText = (kind: string): string => kindWords[kind] ?? kind;
