/** Words of the page of fittings, of saving, of files and of links. */
/** Why something was not saved or read: what happened, and what to do now. */
export const troubleTexts = {
  noRoom:
    "There is no room left on this device or in what the browser allows. Save the fitting to a file now, then make room; saving is tried again by itself.",
  blocked:
    "This browser saves nothing for this page, as in a private window or when site data is switched off. Save the fitting to a file before you close it.",
  newerApp:
    "A newer release of the tool is open in another tab and has taken over. Save the fitting to a file if something is not saved, then load this page again.",
  lost: "The browser lost its database for a moment. Saving is tried again by itself.",
  slow: "The device is slow to answer. Saving is tried again by itself; do not close the page yet.",
  failed: "The browser could not save. Saving is tried again by itself; save the fitting to a file to be sure.",
  changedElsewhere:
    "This fitting was changed in another tab. Nothing was overwritten: keep yours as a fitting of its own, or take what the other tab saved.",
  newerRecord:
    "What is saved here was written by a newer release of the tool and is not overwritten. Load the page again to get that release.",
  missing: "It is no longer here.",
  unwritable:
    "Something in this fitting cannot be saved, so what was saved before stays as it was. Undo the last change, or save the fitting to a file.",
} as const;

export const newsTexts = {
  outdated: troubleTexts.newerApp,
  linkWaits: (title: string): string =>
    `A link brought ${title === "" ? "a fitting" : `the fitting “${title}”`} while you were at work on another one. Yours stays open. Open the one from the link, save it in the list, or leave it.`,
  linkAdded: "The fitting from the link is in the list under “Fittings”.",
  linkNotAdded: "The fitting from the link could not be saved: make room on this device, then open the link once more.",
  received: "This fitting came in a link. It is saved on this device once you save it or change something.",
  lastUnreadable:
    "Your last fitting could not be read. It was left as it is; its raw text can be saved to a file under “Fittings”.",
  lastFailed:
    "The fitting that was open last made a page fail, so it was not opened again. It is as you left it under “Fittings”: open it there, or save it to a file.",
  lastNewer:
    "Your last fitting was saved by a newer release of the tool and was left as it is. Load the page again to get that release.",
  quarantined:
    "What was saved of this fitting could no longer be read. A raw copy of it is set aside under “Fittings”, and what is on the screen is saved in its place.",
  recreated: "What was saved of this fitting had been cleared from this browser. What is on the screen is saved again.",
  restored: "This fitting was deleted in another tab. It is back on the list, with your change.",
  tableNotKept:
    "The open fitting is not saved yet, so it stays open. Save it to a file or try again first, then open the other one once more.",
  historyLost:
    "The fitting is whole, but its earlier steps could not be read, so Undo begins here. They are left as they were found.",
  notLoaded: "The part of the tool that saves fittings could not be loaded. Nothing is saved: load the page again.",
} as const;

/** What is said of fittings that were saved here, were not deleted, and are no longer here. */
export const goneWords = {
  names: (titles: readonly string[], more: number): string =>
    more > 0
      ? `${titles.join(", ")} and ${more} more`
      : titles.length < 2
        ? titles.join("")
        : `${titles.slice(0, -1).join(", ")} and ${titles.at(-1)}`,
  lost: (names: string, count: number): string =>
    `${names} ${count === 1 ? "is" : "are"} no longer in this browser. ${count === 1 ? "It was" : "They were"} not deleted with this tool: the browser, or somebody, cleared what was saved here.`,
  file: (name: string, day: string): string => `the file “${name}”, saved on ${day}`,
  allIn: (file: string): string => `Look for ${file}, and open it here.`,
  someIn: (names: string, file: string): string => `For ${names}, look for ${file}, and open it here.`,
  neverSaved: (names: string): string => `${names}: no file was saved from this browser.`,
  noneSaved: "No file was saved from this browser. If you have one from another device, open it here.",
  openFile: "Open the file",
  letBe: "Continue without",
} as const;

export const linkProblemTexts = {
  notALink: "That link has no fitting in it.",
  tooLong: "The link is longer than this tool makes them. Ask for a file instead.",
  newerLink:
    "The link was made by a newer release of the tool. Load this page again to get that release, then open the link once more. If it is still too new, ask for a file.",
  damaged: "The link was cut short or changed on its way. Copy it again, whole, or ask for a file.",
  cannotUnpack: "This browser is too old to unpack the link. Ask for a file instead.",
  badFitting: "What is in the link is not a fitting this tool can read.",
} as const;

export const noticeWords = {
  label: "Saving",
  saveFile: "Save to a file",
  retry: "Try again",
  keepCopy: "Save mine as a copy",
  takeTheirs: "Open what is saved",
  workHere: "Work here instead",
  elsewhere: "Another tab is writing in this fitting. This one shows what is saved there.",
  newer:
    "This fitting was saved by a newer release of the tool. You can view it here; to change it, load the page again to get that release.",
  keepIt: "Save it here",
  openFromLink: "Open it",
  keepFromLink: "Save it in the list",
  leaveFromLink: "Leave it",
  reload: "Load again",
  release: "A newer release of the tool is ready. What is open is saved; it takes a moment.",
  releaseElsewhere: "The tool was updated in another tab. Load this page again when it suits you.",
  takeRelease: "Update now",
  understood: "OK",
} as const;

export const libraryWords = {
  title: "Fittings",
  lead: "Saved in this browser, on this device, and nowhere else.",
  newFitting: "New fitting",
  loading: "Loading…",
  toCome: (count: number): string => `Opening ${count} more…`,
  empty: "There is nothing here yet. The first measurement you take is saved by itself.",
  untitled: "No name yet",
  find: (count: number): string => `Find one of ${count} by its name`,
  noneNamed: "None has that in its name.",
  showMore: (count: number, left: number): string =>
    count === left ? `Show ${left} more` : `Show ${count} more of ${left}`,
  onTable: "open now",
  notKeptYet: "not saved on this device yet",
  changed: (when: string): string => `changed ${when}`,
  open: "Open",
  goOn: "Continue",
  more: "More",
  moreOf: (title: string): string => `More for ${title}`,
  rename: "Name",
  renamed: (title: string): string => `Named ${title}.`,
  copied: (title: string): string => `Copied ${title}.`,
  putAway: (title: string): string => `Archived ${title}.`,
  takenOut: (title: string): string => `Unarchived ${title}.`,
  putBack: (title: string): string => `Restored ${title}.`,
  copy: "Copy",
  again: "Measure again",
  againNote:
    "Measure again starts a new fitting of the same person, with today’s date: what is pinned stays pinned, you measure the person again, and only the change is planned.",
  compare: "Compare",
  share: "Share",
  saveFile: "Save to a file",
  saveTable: "Save measurements as CSV",
  archive: "Archive",
  unarchive: "Unarchive",
  remove: "Delete",
  removed: (title: string): string => `Deleted ${title}.`,
  undo: "Undo",
  undone: "Undone.",
  restore: "Restore",
  erase: "Delete permanently",
  archivedTitle: "Archived",
  removedTitle: "Deleted",
  removedNote: "Still here until you delete them permanently.",
  notKept: "The open fitting is not saved yet. Save it to a file or try again first.",
  cannotOpen: "It could not be opened.",
} as const;

const allOn = (all: number): string => (all === 1 ? "the piece is pinned" : `all ${all} pieces pinned`);

export const progressTexts = {
  unmeasured: "nothing measured yet",
  girthsLeft: (names: readonly string[]): string => `left to measure: ${names.join(" and ")}`,
  failed: "cannot be planned: the tool makes a mistake with it",
  waiting: "some measurements need another look",
  nothing: "nothing to add: the form measures as the person does",
  planned: (count: number): string =>
    count === 1 ? "1 piece planned, not pinned" : `${count} pieces planned, none pinned`,
  pinned: (done: number, all: number): string => `${done} of ${all} pieces pinned, ${all - done} to go`,
  stopHere: (done: number, all: number): string =>
    `${done} of ${all} pieces pinned; every level line is on target already`,
  allPinned: {
    done: (all: number): string => `done: ${allOn(all)}, and every level line is on target`,
    unread: (all: number): string => `${allOn(all)}; left: measure every level line`,
    notYet: (all: number): string => `${allOn(all)}; left: correct where the padding is over or short`,
  },
} as const;

export const fileWords = {
  title: "Files",
  lead: "A browser can lose what it has saved; a file stays. Files also take fittings to another device.",
  saveAll: (count: number): string => (count === 1 ? "Save it to a file" : `Save all ${count} to one file`),
  openFile: "Open a file",
  openNote: "A fitting, several in one file, or measurements as CSV; several files at once, too.",
  never: "Nothing has been saved to a file from this device yet.",
  lastSaved: (when: string, changes: number): string =>
    changes === 0
      ? `Last file made ${when}; nothing has changed since.`
      : `Last file made ${when}; ${changes === 1 ? "one fitting has" : `${changes} fittings have`} changed since.`,
  leftOut: (count: number): string =>
    `${count === 1 ? "One that cannot be read is" : `${count} that cannot be read are`} not in the file; save the raw text below.`,
  imported: "Opened and saved:",
  emptyBackup: "This backup holds no fittings; nothing was added.",
  added: (title: string): string => `${title}: added.`,
  alreadyHere: (title: string): string => `${title}: already here, the same; nothing was changed.`,
  addedBeside: (title: string): string =>
    `${title}: a different version is here, so it was added beside it. Compare the two.`,
  refused: "Nothing was taken from the file.",
} as const;

export const fileProblemTexts = {
  empty: "The file is empty.",
  tooLarge: (most: string): string => `The file is too large; the most is ${most}.`,
  notText: "The file is not text. Choose a file that this tool saved, or measurements as CSV.",
  notJson: "The file cannot be read. Choose a file that this tool saved, or measurements as CSV.",
  newerBundle: "The file was saved by a newer release. Load this page again to get that release.",
  tooMuch: (most: number, what: string): string =>
    `The file holds more than any file of this tool: at most ${most} ${what} were expected. Choose a file that this tool saved.`,
  damaged:
    "The file was damaged on its way, or changed by hand. Save it once more where it comes from, or choose an earlier copy.",
  damagedFitting: (number: number): string =>
    `Fitting ${number} in the file was damaged on its way, or changed by hand.`,
  inFitting: (number: number, sentence: string): string => `Fitting ${number}: ${sentence}`,
} as const;

export const sheetProblemTexts = {
  empty: "The table is empty.",
  noLengths: "The table names its columns, and no measurement stands under them. Fill it in and open it again.",
  tooLong: "The table is too long.",
  tooManyCells: "The table has too many cells.",
  openQuote: (line: number): string => `Line ${line}: a quotation mark is not closed.`,
  afterQuote: (line: number): string => `Line ${line}: there is something after a closing quotation mark.`,
  noColumns: (expected: string): string => `The first line must name the columns: ${expected}.`,
  unknownMeasurement: (line: number, got: string, nearest: string | null): string =>
    `Line ${line}: “${got}” is not a measurement of this tool${nearest === null ? "" : `. Did you mean ${nearest}?`}`,
  twice: (line: number, name: string): string => `Line ${line}: ${name} is in the table twice.`,
  unknownUnit: (line: number, got: string): string => `Line ${line}: “${got}” is not a unit; write cm, in or mm.`,
  tooManyColumns: (line: number): string =>
    `Line ${line} has more cells than the first line. Put lengths with a comma in quotation marks.`,
  unreadableLength: (line: number, sentence: string): string => `Line ${line}: ${sentence}`,
} as const;

export const asideWords = {
  title: "Set aside",
  lead: "What could not be read is here exactly as it was found. Nothing was written over it.",
  found: (what: string, when: string): string => `${what}, found ${when}`,
  kinds: { fitting: "A fitting", history: "Steps to undo", settings: "Settings of this device" },
  newer:
    "A fitting of a newer release. Here it can be viewed and saved as raw text; to change it, load the page again with that release.",
  unreadable: "A fitting that cannot be read.",
  saveRaw: "Save the raw text",
  look: "View it",
  cannotLook: "This release cannot read it. Load the page again to get the newer one.",
  erase: "Delete it",
} as const;

export const deviceWords = {
  title: "This device",
  offline: {
    unsupported: "Without a network this page does not open here: the browser, or this address, does not allow it.",
    preparing: "Getting ready to open without a network…",
    ready: "Opens without a network.",
    newReleaseWaits: "A newer release is ready.",
    newReleaseElsewhere: "The tool was updated in another tab.",
    failed:
      "Not ready to open without a network: the files did not arrive as they were made. It is tried again next time.",
  },
  kept: {
    kept: "The browser keeps what is saved here until you clear it.",
    mayBeCleared:
      "The browser may clear what is saved here when the device runs short of room. Installing the tool and saving files make it safer.",
    unknown: "This browser does not say whether it may clear what is saved here. Save files now and then.",
  },
  eraseAll: "Delete everything on this device",
  eraseAllNote: "Fittings, steps, what was set aside and settings. Files you saved stay. This cannot be undone.",
  eraseAllSure: "Yes, delete everything",
  erased: "Everything was deleted from this device.",
  keep: "Keep it all",
} as const;

export const shareWords = {
  title: (title: string): string => `Share ${title}`,
  lead: "The measurements travel inside the link itself. No server sees them, but everyone who has the link has a copy that cannot be called back, and so have the messengers and histories it passes through.",
  names: "Include the name and the notes",
  work: "Include what has been pinned and measured so far",
  link: "Link",
  onlyHere:
    "The tool runs on this device alone just now, so another device cannot open this link. Save a file under “Fittings” and pass that on, or open the tool at its public address.",
  copy: "Copy the link",
  copied: "Copied.",
  copyByHand: "Select the link and copy it.",
  code: "Show as a code",
  codeLabel: "QR code of the link",
  large: "As large as the screen",
  small: "Smaller",
  tooLong: (characters: number, most: number): string =>
    `It would be ${characters} characters long, and messengers cut links beyond ${most}. Leave out what has been pinned, or save a file.`,
  codeTooLong:
    "The link is too long for a code that a camera can read across a room. Leave something out, or pass on the link.",
} as const;

export const takeHomeWords = {
  control: "Take home",
  keys: "T",
  does: "the sample person as a link and a code, for the class to take home",
  title: "For the class to take home",
  lead: "Everyone who opens the link gets this sample person on their own device, to plan and pad for themselves.",
} as const;

export const compareWords = {
  title: (title: string): string => `Compare ${title}`,
  with: "With",
  none: "There is no other fitting to compare with.",
  reading: "Measurement",
  before: "then",
  after: "now",
  change: "change",
  same: "the same",
  onlyThen: "not measured now",
  onlyNow: "not measured then",
  bodies: "Measurements of the person",
  summary: (changed: number, all: number): string =>
    changed === 0 ? `All ${all} measurements are the same.` : `${changed} of ${all} measurements changed.`,
  /** What the later fitting asks of the padding, in the words of the list. */
  asks: (left: string): string => (left === "" ? "" : `What the later one asks for: ${left}.`),
} as const;
