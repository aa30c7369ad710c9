/**
 * Words of files that go out and come in, and of a wish that was refused. A wish is not tried again by itself, as saving
 * is: what is said here is what happened, that nothing was changed, and what to do now.
 */
export const refusedTexts = {
  noRoom:
    "Nothing was changed: there is no room left on this device or in what the browser allows. Make room, then try again.",
  blocked:
    "Nothing was changed: this browser saves nothing for this page, as in a private window or when site data is switched off.",
  newerApp:
    "Nothing was changed: a newer release of the tool is open in another tab and has taken over. Load this page again, then try again.",
  lost: "Nothing was changed: the browser lost its database for a moment. Try again.",
  slow: "The device takes very long to answer. Wait a moment, look whether it was done, and try again if it was not.",
  failed: "It did not work: what is saved here is not what was to be saved. Load this page again, then try again.",
  changedElsewhere: "Nothing was changed: this fitting is open in another tab. Do it there.",
  newerRecord:
    "Nothing was changed: what is saved here comes from a newer release of the tool. Load the page again to get that release.",
  missing: "Nothing was changed: it is no longer here.",
  unwritable:
    "Nothing was changed: the fitting could not be read again as it would be saved. Its name or notes may be too long.",
} as const;

/** Why the list could not be read. */
export const notListedTexts = {
  noRoom: "The list could not be read: the device has no room left. Make room, then load this page again.",
  blocked:
    "This browser saves nothing for this page, as in a private window or when site data is switched off. There is no list to show.",
  newerApp:
    "A newer release of the tool is open in another tab and has taken over. Load this page again to get that release.",
  lost: "The list could not be read: the browser lost its database. Load this page again.",
  slow: "The list could not be read yet: the device takes very long to answer. Load this page again in a moment.",
  failed: "The list could not be read. Load this page again.",
} as const;

export const backupWords = {
  reading: "Putting the file together…",
  /** One press for each file: some browsers hold back a second one that nobody asked for. */
  saveNext: (number: number, all: number): string => `Save file ${number} of ${all}`,
  divided: (all: number): string =>
    `There is too much for one file. Press once for each of the ${all} files; you need all of them to get everything back.`,
  /** Beside the name of the file. */
  part: (number: number, all: number): string => `${number} of ${all}`,
} as const;

export const intakeWords = {
  more: (count: number): string => `And ${count} more.`,
  reading: "Opening the file…",
  readingMany: (at: number, all: number): string => `Opening file ${at} of ${all}…`,
  notFrom: (file: string): string => `Nothing was taken from “${file}”:`,
  links: "Links to fittings, pasted here: as many as you like, with anything between them",
  addLinks: (count: number): string =>
    count === 0 ? "Add from links" : count === 1 ? "Add the fitting of 1 link" : `Add the fittings of ${count} links`,
  noLinkTaken: "Nothing was taken from the links.",
  fromLink: (number: number, sentence: string): string => `Link ${number}: ${sentence}`,
  undo: "Undo",
  openAdded: "Open it",
  undone: "Undone: what was added is under “Deleted”.",
  addAnyway: (count: number): string => (count === 1 ? "Add a copy anyway" : `Add ${count} copies anyway`),
} as const;
