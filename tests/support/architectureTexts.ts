import type { Wall } from "./architectureProject";

/**
 * Words about where and how a program was written rather than about the program. They are put together from parts
 * here, so that this file does not hold them either.
 */
const foreignWords: readonly string[] = [
  ["tran", "script"].join(""),
  ["sub", "agent"].join(""),
  ["seed ", "document"].join(""),
  ["AI ", "agent"].join(""),
  ["AI ", "session"].join(""),
  ["", "work", ""].join("/"),
  ["", "tmp", ""].join("/"),
  [".", "library"].join(""),
  ["//", "registry", "."].join(""),
];

/** The project speaks of itself alone, and names no folder or server of the machine it was written on. */
export const ownWordsOnly: Wall = (project) =>
  [...project.files]
    .filter(([, text]) => !text.includes("\0"))
    .flatMap(([path, text]) =>
      text.split("\n").flatMap((line, index) => {
        const words = foreignWords.filter((word) => line.toLowerCase().includes(word.toLowerCase()));
        return words.map((word) => ({ path, line: index + 1, message: `"${word}" is not about the project` }));
      }),
    );

/** The lock file names versions and sums, no server: it installs from whichever registry the person uses. */
export const lockWithoutHosts: Wall = (project) => {
  const path = "package-lock.json";
  const resolved = /"resolved": *"http/.exec(project.files.get(path) ?? "");
  return resolved === null ? [] : [{ path, line: 1, message: "names the servers packages came from" }];
};

/** The page forbids everything its policy does not name, and runs no script or style written into it. */
export const pagePolicy: Wall = (project) => {
  const path = "index.html";
  const page = project.files.get(path);
  if (page === undefined) return [];
  const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(page)?.[1] ?? "";
  const found = (message: string) => ({ path, line: 1, message });
  return [
    ...(policy.includes("default-src 'none'") ? [] : [found("has no policy that begins by forbidding everything")]),
    ...(/unsafe|https?:|\*/.test(policy) ? [found("has a policy that lets in what is not ours")] : []),
    ...(/<style|\sstyle=|\son[a-z]+=|<script(?![^>]*\ssrc=)/.test(page)
      ? [found("holds a script or style of its own")]
      : []),
  ];
};
