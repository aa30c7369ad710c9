import * as field from "../../src/text/field";
import * as fieldDe from "../../src/text/de/field";
import * as language from "../../src/text/language";
import * as languageDe from "../../src/text/de/language";
import * as moment from "../../src/text/moment";
import * as momentDe from "../../src/text/de/moment";
import * as saved from "../../src/text/saved";
import * as savedDe from "../../src/text/de/saved";
import * as workroom from "../../src/text/workroom";
import * as workroomDe from "../../src/text/de/workroom";
import * as writtenLength from "../../src/text/writtenLength";
import * as writtenLengthDe from "../../src/text/de/writtenLength";

/** The words of a module in another language: the same names and shapes, other sentences. */
type Translated<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Result
    ? (...given: Given) => Translated<Result>
    : T extends object
      ? { readonly [Key in keyof T]: Translated<T[Key]> }
      : T;

export interface Pair {
  readonly english: object;
  readonly german: object;
}

/** The compiler refuses a translation that lacks a name, or says with a number what English says with a length. */
const pair = <English extends object>(english: English, german: Translated<English>): Pair => ({ english, german });

/** Each module that is translated, beside its English twin. */
export const germanPairs: { readonly [name: string]: Pair } = {
  field: pair(field, fieldDe),
  language: pair(language, languageDe),
  moment: pair(moment, momentDe),
  saved: pair(saved, savedDe),
  workroom: pair(workroom, workroomDe),
  writtenLength: pair(writtenLength, writtenLengthDe),
};
