import { resolve } from "node:path";
import ts from "typescript";

/**
 * Compiles one made-up module as if it lay at the top of the core, with the core's own compiler settings, and returns
 * what the compiler says against it. Nothing is written to disk.
 */
export function coreComplaints(root: string, text: string): readonly string[] {
  const path = resolve(root, "src/core/planted.ts");
  const settings = coreSettings(root);
  const host = ts.createCompilerHost(settings);
  const planted = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const program = ts.createProgram([path], settings, {
    ...host,
    fileExists: (name) => name === path || host.fileExists(name),
    readFile: (name) => (name === path ? text : host.readFile(name)),
    getSourceFile: (name, target) => (name === path ? planted : sharedFile(host, name, target)),
  });
  const diagnostics = [
    ...program.getOptionsDiagnostics(),
    ...program.getSyntacticDiagnostics(planted),
    ...program.getSemanticDiagnostics(planted),
  ];
  return diagnostics.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "));
}

/** The settings of src/core/tsconfig.json, but without writing declarations out. */
function coreSettings(root: string): ts.CompilerOptions {
  const file = resolve(root, "src/core/tsconfig.json");
  const parsed = ts.getParsedCommandLineOfConfigFile(
    file,
    {},
    { ...ts.sys, onUnRecoverableConfigFileDiagnostic: fail },
  );
  if (parsed === undefined) throw new Error(`${file} cannot be read.`);
  const { composite, emitDeclarationOnly, declaration, outDir, ...settings } = parsed.options;
  return { ...settings, noEmit: true };
}

function fail(diagnostic: ts.Diagnostic): never {
  throw new Error(ts.flattenDiagnosticMessageText(diagnostic.messageText, " "));
}

/** The library's own files are large; each is parsed once for all the compilations of a run. */
const parsedFiles = new Map<string, ts.SourceFile | undefined>();

function sharedFile(
  host: ts.CompilerHost,
  name: string,
  target: ts.ScriptTarget | ts.CreateSourceFileOptions,
): ts.SourceFile | undefined {
  if (!parsedFiles.has(name)) parsedFiles.set(name, host.getSourceFile(name, target));
  return parsedFiles.get(name);
}
