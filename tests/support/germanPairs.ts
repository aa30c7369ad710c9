import * as above from "../../src/text/above";
import * as aboveDe from "../../src/text/de/above";
import * as arm from "../../src/text/arm";
import * as armDe from "../../src/text/de/arm";
import * as armholeTexts from "../../src/text/armholeTexts";
import * as armholeTextsDe from "../../src/text/de/armholeTexts";
import * as batting from "../../src/text/batting";
import * as battingDe from "../../src/text/de/batting";
import * as cautions from "../../src/text/cautions";
import * as cautionsDe from "../../src/text/de/cautions";
import * as classView from "../../src/text/classView";
import * as classViewDe from "../../src/text/de/classView";
import * as copyTitles from "../../src/text/copyTitles";
import * as copyTitlesDe from "../../src/text/de/copyTitles";
import * as field from "../../src/text/field";
import * as fieldDe from "../../src/text/de/field";
import * as files from "../../src/text/files";
import * as filesDe from "../../src/text/de/files";
import * as filledSheet from "../../src/text/filledSheet";
import * as filledSheetDe from "../../src/text/de/filledSheet";
import * as finishing from "../../src/text/finishing";
import * as finishingDe from "../../src/text/de/finishing";
import * as forming from "../../src/text/forming";
import * as formingDe from "../../src/text/de/forming";
import * as formKinds from "../../src/text/formKinds";
import * as formKindsDe from "../../src/text/de/formKinds";
import * as formMatters from "../../src/text/formMatters";
import * as formMattersDe from "../../src/text/de/formMatters";
import * as language from "../../src/text/language";
import * as languageDe from "../../src/text/de/language";
import * as learning from "../../src/text/learning";
import * as learningDe from "../../src/text/de/learning";
import * as levelLines from "../../src/text/levelLines";
import * as levelLinesDe from "../../src/text/de/levelLines";
import * as library from "../../src/text/library";
import * as libraryDe from "../../src/text/de/library";
import * as linesAtForm from "../../src/text/linesAtForm";
import * as linesAtFormDe from "../../src/text/de/linesAtForm";
import * as makingSteps from "../../src/text/makingSteps";
import * as makingStepsDe from "../../src/text/de/makingSteps";
import * as measurements from "../../src/text/measurements";
import * as measurementsDe from "../../src/text/de/measurements";
import * as measuring from "../../src/text/measuring";
import * as measuringDe from "../../src/text/de/measuring";
import * as moment from "../../src/text/moment";
import * as momentDe from "../../src/text/de/moment";
import * as padding from "../../src/text/padding";
import * as paddingDe from "../../src/text/de/padding";
import * as pageTexts from "../../src/text/pageTexts";
import * as pageTextsDe from "../../src/text/de/pageTexts";
import * as patterns from "../../src/text/patterns";
import * as patternsDe from "../../src/text/de/patterns";
import * as pictures from "../../src/text/pictures";
import * as picturesDe from "../../src/text/de/pictures";
import * as pictureTexts from "../../src/text/pictureTexts";
import * as pictureTextsDe from "../../src/text/de/pictureTexts";
import * as pieces from "../../src/text/pieces";
import * as piecesDe from "../../src/text/de/pieces";
import * as plan from "../../src/text/plan";
import * as planDe from "../../src/text/de/plan";
import * as planning from "../../src/text/planning";
import * as planningDe from "../../src/text/de/planning";
import * as printing from "../../src/text/printing";
import * as printingDe from "../../src/text/de/printing";
import * as problems from "../../src/text/problems";
import * as problemsDe from "../../src/text/de/problems";
import * as projection from "../../src/text/projection";
import * as projectionDe from "../../src/text/de/projection";
import * as questions from "../../src/text/questions";
import * as questionsDe from "../../src/text/de/questions";
import * as remote from "../../src/text/remote";
import * as remoteDe from "../../src/text/de/remote";
import * as rescue from "../../src/text/rescue";
import * as rescueDe from "../../src/text/de/rescue";
import * as roster from "../../src/text/roster";
import * as rosterDe from "../../src/text/de/roster";
import * as saved from "../../src/text/saved";
import * as savedDe from "../../src/text/de/saved";
import * as sessionSheet from "../../src/text/sessionSheet";
import * as sessionSheetDe from "../../src/text/de/sessionSheet";
import * as stepNotes from "../../src/text/stepNotes";
import * as stepNotesDe from "../../src/text/de/stepNotes";
import * as steps from "../../src/text/steps";
import * as stepsDe from "../../src/text/de/steps";
import * as stops from "../../src/text/stops";
import * as stopsDe from "../../src/text/de/stops";
import * as supplies from "../../src/text/supplies";
import * as suppliesDe from "../../src/text/de/supplies";
import * as thinText from "../../src/text/thinText";
import * as thinTextDe from "../../src/text/de/thinText";
import * as turning from "../../src/text/turning";
import * as turningDe from "../../src/text/de/turning";
import * as turnIt from "../../src/text/turnIt";
import * as turnItDe from "../../src/text/de/turnIt";
import * as upperChestTexts from "../../src/text/upperChestTexts";
import * as upperChestTextsDe from "../../src/text/de/upperChestTexts";
import * as withoutFigures from "../../src/text/withoutFigures";
import * as withoutFiguresDe from "../../src/text/de/withoutFigures";
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
  above: pair(above, aboveDe),
  arm: pair(arm, armDe),
  armholeTexts: pair(armholeTexts, armholeTextsDe),
  batting: pair(batting, battingDe),
  cautions: pair(cautions, cautionsDe),
  classView: pair(classView, classViewDe),
  copyTitles: pair(copyTitles, copyTitlesDe),
  field: pair(field, fieldDe),
  files: pair(files, filesDe),
  filledSheet: pair(filledSheet, filledSheetDe),
  finishing: pair(finishing, finishingDe),
  forming: pair(forming, formingDe),
  formKinds: pair(formKinds, formKindsDe),
  formMatters: pair(formMatters, formMattersDe),
  language: pair(language, languageDe),
  learning: pair(learning, learningDe),
  levelLines: pair(levelLines, levelLinesDe),
  library: pair(library, libraryDe),
  linesAtForm: pair(linesAtForm, linesAtFormDe),
  makingSteps: pair(makingSteps, makingStepsDe),
  measurements: pair(measurements, measurementsDe),
  measuring: pair(measuring, measuringDe),
  moment: pair(moment, momentDe),
  padding: pair(padding, paddingDe),
  pageTexts: pair(pageTexts, pageTextsDe),
  patterns: pair(patterns, patternsDe),
  pictures: pair(pictures, picturesDe),
  pictureTexts: pair(pictureTexts, pictureTextsDe),
  pieces: pair(pieces, piecesDe),
  plan: pair(plan, planDe),
  planning: pair(planning, planningDe),
  printing: pair(printing, printingDe),
  problems: pair(problems, problemsDe),
  projection: pair(projection, projectionDe),
  questions: pair(questions, questionsDe),
  remote: pair(remote, remoteDe),
  rescue: pair(rescue, rescueDe),
  roster: pair(roster, rosterDe),
  saved: pair(saved, savedDe),
  sessionSheet: pair(sessionSheet, sessionSheetDe),
  stepNotes: pair(stepNotes, stepNotesDe),
  steps: pair(steps, stepsDe),
  stops: pair(stops, stopsDe),
  supplies: pair(supplies, suppliesDe),
  thinText: pair(thinText, thinTextDe),
  turning: pair(turning, turningDe),
  turnIt: pair(turnIt, turnItDe),
  upperChestTexts: pair(upperChestTexts, upperChestTextsDe),
  withoutFigures: pair(withoutFigures, withoutFiguresDe),
  workroom: pair(workroom, workroomDe),
  writtenLength: pair(writtenLength, writtenLengthDe),
};
