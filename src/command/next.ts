import { nextHelp } from "./nextHelp";
import { nextOfText } from "./nextOfText";
import { runFileCommand } from "./runFileCommand";

/** The command for people who script and for programs that walk a job: fittings with their work in, the next step out. */
runFileCommand(nextHelp, nextOfText);
