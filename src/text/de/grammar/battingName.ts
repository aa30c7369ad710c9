import { startingBatting } from "../../../document/startingBatting";

/** What the English page and the files of the sample people call a batting. */
const germanNames: { readonly [name: string]: string } = {
  [startingBatting("in").name]: "übliches Vlies",
  "needled cotton": "genadelte Baumwolle",
  "thin bonded batting": "dünnes Volumenvlies",
  "bonded batting": "Volumenvlies",
  "high-loft batting": "hochbauschiges Volumenvlies",
  batting: "Vlies",
  "Needled cotton": "genadelte Baumwolle",
  "Bonded polyester, the thin one": "Volumenvlies aus Polyester, dünn",
  "Bonded polyester, the middle weight": "Volumenvlies aus Polyester, mittel",
  "Thick bonded polyester": "Volumenvlies aus Polyester, dick",
};

/** A fitting keeps the name it began with, in English; as long as nobody says another one it is shown in German. */
export const battingName = (name: string): string =>
  Object.hasOwn(germanNames, name) ? (germanNames[name] ?? name) : name;
