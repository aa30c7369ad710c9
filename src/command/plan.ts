import { planHelp } from "./planHelp";
import { planOfText } from "./planOfText";
import { runFileCommand } from "./runFileCommand";

/** The command for people who script and for programs that check us: fitting files in, plan files out. */
runFileCommand(planHelp, planOfText);
