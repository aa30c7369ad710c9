import * as armholeTexts from "../../src/text/armholeTexts";
import * as armholeTextsDe from "../../src/text/de/armholeTexts";
import * as batting from "../../src/text/batting";
import * as battingDe from "../../src/text/de/batting";
import * as field from "../../src/text/field";
import * as fieldDe from "../../src/text/de/field";
import * as formKinds from "../../src/text/formKinds";
import * as formKindsDe from "../../src/text/de/formKinds";
import * as forming from "../../src/text/forming";
import * as formingDe from "../../src/text/de/forming";
import * as language from "../../src/text/language";
import * as languageDe from "../../src/text/de/language";
import * as measurements from "../../src/text/measurements";
import * as measurementsDe from "../../src/text/de/measurements";
import * as measuring from "../../src/text/measuring";
import * as measuringDe from "../../src/text/de/measuring";
import * as moment from "../../src/text/moment";
import * as momentDe from "../../src/text/de/moment";
import * as pageTexts from "../../src/text/pageTexts";
import * as pageTextsDe from "../../src/text/de/pageTexts";
import * as pictures from "../../src/text/pictures";
import * as picturesDe from "../../src/text/de/pictures";
import * as questions from "../../src/text/questions";
import * as questionsDe from "../../src/text/de/questions";
import * as saved from "../../src/text/saved";
import * as savedDe from "../../src/text/de/saved";
import * as thinText from "../../src/text/thinText";
import * as thinTextDe from "../../src/text/de/thinText";
import * as upperChestTexts from "../../src/text/upperChestTexts";
import * as upperChestTextsDe from "../../src/text/de/upperChestTexts";
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
  armholeTexts: pair(armholeTexts, armholeTextsDe),
  batting: pair(batting, battingDe),
  field: pair(field, fieldDe),
  formKinds: pair(formKinds, formKindsDe),
  forming: pair(forming, formingDe),
  language: pair(language, languageDe),
  measurements: pair(measurements, measurementsDe),
  measuring: pair(measuring, measuringDe),
  moment: pair(moment, momentDe),
  pageTexts: pair(pageTexts, pageTextsDe),
  pictures: pair(pictures, picturesDe),
  questions: pair(questions, questionsDe),
  saved: pair(saved, savedDe),
  thinText: pair(thinText, thinTextDe),
  upperChestTexts: pair(upperChestTexts, upperChestTextsDe),
  workroom: pair(workroom, workroomDe),
  writtenLength: pair(writtenLength, writtenLengthDe),
};
