import { firstBytes } from "./firstBytes";
import { planCommand } from "./planCommand";

// A reader that has seen enough, such as `head`, closes the pipe: that is no failure of the plan.
process.stdout.on("error", (error) => {
  if (!("code" in error) || error.code !== "EPIPE") throw error;
});

/** Bytes; several times what the largest fitting takes. */
const largestFile = 32_000_000;

/** The command for people who script and for programs that check us: fitting files in, plan files out. */
process.exitCode = planCommand(process.argv.slice(2), {
  read: (name) => {
    try {
      return new TextDecoder().decode(firstBytes(name, largestFile));
    } catch (error) {
      if (error instanceof Error && "code" in error) return null;
      throw error;
    }
  },
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
