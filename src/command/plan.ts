import { readFileSync } from "node:fs";
import { planCommand } from "./planCommand";

/** The command for people who script and for programs that check us: fitting files in, plan files out. */
process.exitCode = planCommand(process.argv.slice(2), {
  read: (name) => {
    try {
      return readFileSync(name === "-" ? process.stdin.fd : name, "utf8");
    } catch (error) {
      if (error instanceof Error && "code" in error) return null;
      throw error;
    }
  },
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
