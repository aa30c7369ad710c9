/** Which folders of tests/ run without a browser, and which need the elements of a page. Each test lies in one. */
export const plainTestFolders = [
  "core",
  "laws",
  "outside",
  "document",
  "command",
  "gallery",
  "tools",
  "support",
  "app",
] as const;
export const pageTestFolders = ["ui"] as const;
