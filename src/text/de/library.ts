import { listed } from "./grammar/listed";

export const troubleTexts = {
  noRoom:
    "Auf diesem Gerät oder in dem, was der Browser erlaubt, ist kein Platz mehr. Speichern Sie die Anprobe jetzt in eine Datei und schaffen Sie dann Platz; das Speichern wird von selbst wieder versucht.",
  blocked:
    "Dieser Browser speichert für diese Seite nichts, etwa in einem privaten Fenster oder wenn Websitedaten abgeschaltet sind. Speichern Sie die Anprobe in eine Datei, bevor Sie schließen.",
  newerApp:
    "Eine neuere Fassung ist in einem anderen Tab offen und hat übernommen. Speichern Sie die Anprobe in eine Datei, falls etwas nicht gespeichert ist, und laden Sie dann diese Seite neu.",
  lost: "Der Browser hat seine Datenbank kurz verloren. Das Speichern wird von selbst wieder versucht.",
  slow: "Das Gerät antwortet langsam. Das Speichern wird von selbst wieder versucht; schließen Sie die Seite noch nicht.",
  failed:
    "Der Browser konnte nicht speichern. Es wird von selbst wieder versucht; speichern Sie die Anprobe zur Sicherheit in eine Datei.",
  changedElsewhere:
    "Diese Anprobe wurde in einem anderen Tab geändert. Nichts wurde überschrieben: Behalten Sie Ihre als eigene Anprobe, oder nehmen Sie, was der andere Tab gespeichert hat.",
  newerRecord:
    "Was hier gespeichert ist, stammt von einer neueren Fassung und wird nicht überschrieben. Laden Sie die Seite neu, um diese Fassung zu bekommen.",
  missing: "Sie ist nicht mehr hier.",
  unwritable:
    "Etwas in dieser Anprobe lässt sich nicht speichern; was vorher gespeichert war, bleibt, wie es ist. Nehmen Sie die letzte Änderung zurück, oder speichern Sie die Anprobe in eine Datei.",
} as const;

export const newsTexts = {
  outdated: troubleTexts.newerApp,
  linkWaits: (title: string): string =>
    `Ein Link hat ${title === "" ? "eine Anprobe" : `die Anprobe „${title}“`} gebracht, während Sie an einer anderen arbeiten. Ihre bleibt offen. Öffnen Sie die aus dem Link, speichern Sie sie in der Liste, oder lassen Sie sie.`,
  linkAdded: "Die Anprobe aus dem Link steht in der Liste unter „Anproben“.",
  linkNotAdded:
    "Die Anprobe aus dem Link ließ sich nicht speichern: Schaffen Sie Platz auf diesem Gerät, und öffnen Sie den Link dann noch einmal.",
  received:
    "Diese Anprobe kam in einem Link. Sie wird auf diesem Gerät gespeichert, sobald Sie sie speichern oder etwas ändern.",
  lastUnreadable:
    "Ihre letzte Anprobe ließ sich nicht lesen. Sie bleibt, wie sie ist; ihren Rohtext können Sie unter „Anproben“ in eine Datei speichern.",
  lastFailed:
    "Bei der zuletzt offenen Anprobe hat eine Seite versagt, darum wurde sie nicht wieder geöffnet. Sie steht unverändert unter „Anproben“: Öffnen Sie sie dort, oder speichern Sie sie in eine Datei.",
  lastNewer:
    "Ihre letzte Anprobe wurde von einer neueren Fassung gespeichert und bleibt, wie sie ist. Laden Sie die Seite neu, um diese Fassung zu bekommen.",
  quarantined:
    "Was von dieser Anprobe gespeichert war, ließ sich nicht mehr lesen. Eine Rohkopie liegt unter „Anproben“, und was auf dem Bildschirm steht, ist an ihrer Stelle gespeichert.",
  recreated:
    "Was von dieser Anprobe gespeichert war, war aus diesem Browser gelöscht. Was auf dem Bildschirm steht, ist wieder gespeichert.",
  restored: "Diese Anprobe wurde in einem anderen Tab gelöscht. Sie steht wieder in der Liste, mit Ihrer Änderung.",
  tableNotKept:
    "Die offene Anprobe ist noch nicht gespeichert und bleibt darum offen. Speichern Sie sie zuerst in eine Datei, oder versuchen Sie es noch einmal, und öffnen Sie dann die andere.",
  historyLost:
    "Die Anprobe ist vollständig, aber ihre früheren Schritte ließen sich nicht lesen; „Zurück“ beginnt darum hier. Sie bleiben, wie sie gefunden wurden.",
  notLoaded:
    "Der Teil, der Anproben speichert, ließ sich nicht laden. Nichts wird gespeichert: Laden Sie die Seite neu.",
} as const;

export const goneWords = {
  names: (titles: readonly string[], more: number): string =>
    more > 0 ? `${titles.join(", ")} und ${more} weitere` : listed(titles),
  lost: (names: string, count: number): string =>
    `${names} ${count === 1 ? "ist" : "sind"} nicht mehr in diesem Browser. Mit Padwright wurde hier nichts gelöscht: Der Browser, oder jemand, hat entfernt, was hier gespeichert war.`,
  file: (name: string, day: string): string => `die Datei „${name}“ vom ${day}`,
  allIn: (file: string): string => `Suchen Sie ${file}, und öffnen Sie sie hier.`,
  someIn: (names: string, file: string): string => `Für ${names} suchen Sie ${file}, und öffnen Sie sie hier.`,
  neverSaved: (names: string): string => `${names}: Aus diesem Browser wurde keine Datei gespeichert.`,
  noneSaved:
    "Aus diesem Browser wurde keine Datei gespeichert. Haben Sie eine von einem anderen Gerät, öffnen Sie sie hier.",
  openFile: "Die Datei öffnen",
  letBe: "Ohne sie weitermachen",
} as const;

export const linkProblemTexts = {
  notALink: "In diesem Link ist keine Anprobe.",
  tooLong: "Der Link ist länger, als sie hier gemacht werden. Bitten Sie stattdessen um eine Datei.",
  newerLink:
    "Der Link stammt von einer neueren Fassung. Laden Sie diese Seite neu, um sie zu bekommen, und öffnen Sie den Link noch einmal. Ist er immer noch zu neu, bitten Sie um eine Datei.",
  damaged:
    "Der Link wurde unterwegs gekürzt oder verändert. Kopieren Sie ihn noch einmal ganz, oder bitten Sie um eine Datei.",
  cannotUnpack: "Dieser Browser ist zu alt, um den Link auszupacken. Bitten Sie um eine Datei.",
  badFitting: "Was in dem Link steht, lässt sich hier nicht als Anprobe lesen.",
} as const;

export const noticeWords = {
  label: "Speichern",
  saveFile: "In eine Datei speichern",
  retry: "Noch einmal versuchen",
  keepCopy: "Meine als Kopie speichern",
  takeTheirs: "Das Gespeicherte öffnen",
  workHere: "Hier weiterarbeiten",
  elsewhere: "Ein anderer Tab schreibt in diese Anprobe. Dieser zeigt, was dort gespeichert ist.",
  newer:
    "Diese Anprobe wurde von einer neueren Fassung gespeichert. Hier können Sie sie ansehen; um sie zu ändern, laden Sie die Seite neu.",
  keepIt: "Hier speichern",
  openFromLink: "Öffnen",
  keepFromLink: "In der Liste speichern",
  leaveFromLink: "Lassen",
  reload: "Neu laden",
  release: "Eine neuere Fassung ist bereit. Was offen ist, ist gespeichert; es dauert einen Augenblick.",
  releaseElsewhere:
    "In einem anderen Tab wurde eine neuere Fassung geladen. Laden Sie diese Seite neu, wenn es Ihnen passt.",
  takeRelease: "Jetzt erneuern",
  understood: "Gut",
} as const;

export const libraryWords = {
  title: "Anproben",
  lead: "In diesem Browser gespeichert, auf diesem Gerät, und nirgends sonst.",
  newFitting: "Neue Anprobe",
  loading: "Wird geladen…",
  toCome: (count: number): string => `${count} weitere werden geöffnet…`,
  empty: "Hier ist noch nichts. Das erste Maß, das Sie nehmen, wird von selbst gespeichert.",
  untitled: "Noch kein Name",
  find: (count: number): string => `Eine von ${count} nach dem Namen suchen`,
  noneNamed: "Keine hat das im Namen.",
  showMore: (count: number, left: number): string =>
    count === left ? `${left} weitere zeigen` : `${count} weitere von ${left} zeigen`,
  onTable: "jetzt offen",
  notKeptYet: "auf diesem Gerät noch nicht gespeichert",
  changed: (when: string): string => `geändert ${when}`,
  open: "Öffnen",
  goOn: "Weitermachen",
  more: "Mehr",
  moreOf: (title: string): string => `Mehr für ${title}`,
  rename: "Name",
  renamed: (title: string): string => `Heißt jetzt ${title}.`,
  copied: (title: string): string => `${title} ist kopiert.`,
  putAway: (title: string): string => `${title} ist archiviert.`,
  takenOut: (title: string): string => `${title} ist aus dem Archiv geholt.`,
  putBack: (title: string): string => `${title} ist wiederhergestellt.`,
  copy: "Kopieren",
  again: "Wieder messen",
  againNote:
    "„Wieder messen“ beginnt für dieselbe Person eine neue Anprobe mit dem heutigen Datum: Was aufgesteckt ist, bleibt, Sie messen die Person wieder, und nur die Änderung wird geplant.",
  compare: "Vergleichen",
  share: "Teilen",
  saveFile: "In eine Datei speichern",
  saveTable: "Maße als CSV speichern",
  archive: "Archivieren",
  unarchive: "Aus dem Archiv holen",
  remove: "Löschen",
  removed: (title: string): string => `${title} ist gelöscht.`,
  undo: "Zurück",
  undone: "Zurückgenommen.",
  restore: "Wiederherstellen",
  erase: "Endgültig löschen",
  archivedTitle: "Archiviert",
  removedTitle: "Gelöscht",
  removedNote: "Noch hier, bis Sie sie endgültig löschen.",
  notKept:
    "Die offene Anprobe ist noch nicht gespeichert. Speichern Sie sie in eine Datei, oder versuchen Sie es zuerst noch einmal.",
  cannotOpen: "Sie ließ sich nicht öffnen.",
} as const;

const allOn = (all: number): string => (all === 1 ? "das Polster ist aufgesteckt" : `alle ${all} Polster aufgesteckt`);

export const progressTexts = {
  unmeasured: "noch nichts gemessen",
  girthsLeft: (names: readonly string[]): string => `noch zu messen: ${listed(names)}`,
  failed: "lässt sich nicht planen: Dabei passiert ein Fehler im Programm",
  waiting: "einige Maße sind noch einmal anzusehen",
  nothing: "nichts aufzupolstern: Die Büste misst dasselbe wie die Person",
  planned: (count: number): string =>
    count === 1 ? "1 Polster geplant, nicht aufgesteckt" : `${count} Polster geplant, keines aufgesteckt`,
  pinned: (done: number, all: number): string => `${done} von ${all} Polstern aufgesteckt, noch ${all - done}`,
  stopHere: (done: number, all: number): string =>
    `${done} von ${all} Polstern aufgesteckt; jede Linie ist schon am Ziel`,
  allPinned: {
    done: (all: number): string => `fertig: ${allOn(all)}, und jede Linie ist am Ziel`,
    unread: (all: number): string => `${allOn(all)}; noch zu tun: jede Linie messen`,
    notYet: (all: number): string => `${allOn(all)}; noch zu tun: berichtigen, wo es zu viel oder zu wenig ist`,
  },
} as const;

export const fileWords = {
  title: "Dateien",
  lead: "Ein Browser kann verlieren, was er gespeichert hat; eine Datei bleibt. Mit Dateien kommen Anproben auch auf ein anderes Gerät.",
  saveAll: (count: number): string =>
    count === 1 ? "In eine Datei speichern" : `Alle ${count} in eine Datei speichern`,
  openFile: "Eine Datei öffnen",
  openNote: "Eine Anprobe, mehrere in einer Datei, oder Maße als CSV; auch mehrere Dateien zugleich.",
  never: "Von diesem Gerät wurde noch nichts in eine Datei gespeichert.",
  lastSaved: (when: string, changes: number): string =>
    changes === 0
      ? `Letzte Datei: ${when}; seither hat sich nichts geändert.`
      : `Letzte Datei: ${when}; seither ${changes === 1 ? "hat sich eine Anprobe" : `haben sich ${changes} Anproben`} geändert.`,
  leftOut: (count: number): string =>
    `${count === 1 ? "Eine, die sich nicht lesen lässt, fehlt" : `${count}, die sich nicht lesen lassen, fehlen`} in der Datei; speichern Sie unten den Rohtext.`,
  imported: "Geöffnet und gespeichert:",
  emptyBackup: "In dieser Sicherung sind keine Anproben; nichts kam dazu.",
  added: (title: string): string => `${title}: hinzugefügt.`,
  alreadyHere: (title: string): string => `${title}: schon hier, dieselbe; nichts wurde geändert.`,
  addedBeside: (title: string): string =>
    `${title}: Hier ist eine andere Fassung davon, sie steht jetzt daneben. Vergleichen Sie die beiden.`,
  refused: "Aus der Datei wurde nichts übernommen.",
} as const;

export const fileProblemTexts = {
  empty: "Die Datei ist leer.",
  tooLarge: (most: string): string => `Die Datei ist zu groß; das Höchste ist ${most}.`,
  notText: "Die Datei ist kein Text. Wählen Sie eine Datei, die hier gespeichert wurde, oder Maße als CSV.",
  notJson: "Die Datei lässt sich nicht lesen. Wählen Sie eine Datei, die hier gespeichert wurde, oder Maße als CSV.",
  newerBundle: "Die Datei stammt von einer neueren Fassung. Laden Sie diese Seite neu, um diese Fassung zu bekommen.",
  tooMuch: (most: number, what: string): string =>
    `Die Datei enthält mehr als jede, die hier gemacht wird: höchstens ${most} ${what} wurden erwartet. Wählen Sie eine Datei, die hier gespeichert wurde.`,
  damaged:
    "Die Datei wurde unterwegs beschädigt oder von Hand geändert. Speichern Sie sie dort, woher sie kommt, noch einmal, oder wählen Sie eine frühere Kopie.",
  damagedFitting: (number: number): string =>
    `Anprobe ${number} in der Datei wurde unterwegs beschädigt oder von Hand geändert.`,
  inFitting: (number: number, sentence: string): string => `Anprobe ${number}: ${sentence}`,
} as const;

export const sheetProblemTexts = {
  empty: "Die Tabelle ist leer.",
  noLengths:
    "Die Tabelle nennt ihre Spalten, aber darunter steht kein Maß. Füllen Sie sie aus, und öffnen Sie sie noch einmal.",
  tooLong: "Die Tabelle ist zu lang.",
  tooManyCells: "Die Tabelle hat zu viele Felder.",
  openQuote: (line: number): string => `Zeile ${line}: Ein Anführungszeichen ist nicht geschlossen.`,
  afterQuote: (line: number): string => `Zeile ${line}: Hinter einem schließenden Anführungszeichen steht noch etwas.`,
  noColumns: (expected: string): string => `Die erste Zeile muss die Spalten nennen: ${expected}.`,
  unknownMeasurement: (line: number, got: string, nearest: string | null): string =>
    `Zeile ${line}: „${got}“ ist hier kein bekanntes Maß${nearest === null ? "" : `. Meinten Sie ${nearest}?`}`,
  twice: (line: number, name: string): string => `Zeile ${line}: ${name} steht zweimal in der Tabelle.`,
  unknownUnit: (line: number, got: string): string =>
    `Zeile ${line}: „${got}“ ist keine Einheit; schreiben Sie cm, in oder mm.`,
  tooManyColumns: (line: number): string =>
    `Zeile ${line} hat mehr Felder als die erste Zeile. Setzen Sie Längen mit Komma in Anführungszeichen.`,
  unreadableLength: (line: number, sentence: string): string => `Zeile ${line}: ${sentence}`,
} as const;

export const asideWords = {
  title: "Beiseitegelegt",
  lead: "Was sich nicht lesen ließ, liegt hier genau so, wie es gefunden wurde. Nichts wurde darübergeschrieben.",
  found: (what: string, when: string): string => `${what}, gefunden ${when}`,
  kinds: { fitting: "Eine Anprobe", history: "Schritte zum Zurücknehmen", settings: "Einstellungen dieses Geräts" },
  newer:
    "Eine Anprobe von einer neueren Fassung. Hier lässt sie sich ansehen und als Rohtext speichern; um sie zu ändern, laden Sie die Seite mit dieser Fassung neu.",
  unreadable: "Eine Anprobe, die sich nicht lesen lässt.",
  saveRaw: "Den Rohtext speichern",
  look: "Ansehen",
  cannotLook: "Diese Fassung kann sie nicht lesen. Laden Sie die Seite neu, um die neuere zu bekommen.",
  erase: "Löschen",
} as const;

export const deviceWords = {
  title: "Dieses Gerät",
  offline: {
    unsupported: "Ohne Netz öffnet sich diese Seite hier nicht: Der Browser oder diese Adresse erlaubt es nicht.",
    preparing: "Wird vorbereitet, damit es ohne Netz geht…",
    ready: "Öffnet sich auch ohne Netz.",
    newReleaseWaits: "Eine neuere Fassung ist bereit.",
    newReleaseElsewhere: "In einem anderen Tab wurde eine neuere Fassung geladen.",
    failed:
      "Öffnet sich noch nicht ohne Netz: Die Dateien kamen nicht so an, wie sie gemacht wurden. Beim nächsten Mal wird es wieder versucht.",
  },
  kept: {
    kept: "Der Browser behält, was hier gespeichert ist, bis Sie es löschen.",
    mayBeCleared:
      "Wenn auf dem Gerät der Platz knapp wird, kann der Browser löschen, was hier gespeichert ist. Sicherer wird es, wenn Sie die Seite als App installieren und Dateien speichern.",
    unknown:
      "Dieser Browser sagt nicht, ob er löschen kann, was hier gespeichert ist. Speichern Sie ab und zu Dateien.",
  },
  eraseAll: "Alles auf diesem Gerät löschen",
  eraseAllNote:
    "Anproben, Schritte, Beiseitegelegtes und Einstellungen. Gespeicherte Dateien bleiben. Das lässt sich nicht zurücknehmen.",
  eraseAllSure: "Ja, alles löschen",
  erased: "Auf diesem Gerät ist alles gelöscht.",
  keep: "Alles behalten",
} as const;

export const shareWords = {
  title: (title: string): string => `${title} teilen`,
  lead: "Die Maße reisen im Link selbst. Kein Server sieht sie, aber jede Person, die den Link hat, hat eine Kopie, die sich nicht zurückholen lässt, und ebenso die Nachrichtendienste und Verläufe, durch die er geht.",
  names: "Name und Notizen mitgeben",
  work: "Mitgeben, was bisher aufgesteckt und gemessen ist",
  link: "Der Link",
  onlyHere:
    "Padwright läuft gerade nur auf diesem Gerät; ein anderes kann diesen Link nicht öffnen. Speichern Sie unter „Anproben“ eine Datei und geben Sie diese weiter, oder öffnen Sie Padwright an seiner öffentlichen Adresse.",
  copy: "Den Link kopieren",
  copied: "Kopiert.",
  copyByHand: "Markieren Sie den Link und kopieren Sie ihn.",
  code: "Als Code zeigen",
  codeLabel: "QR-Code des Links",
  large: "So groß wie der Bildschirm",
  small: "Kleiner",
  tooLong: (characters: number, most: number): string =>
    `Er wäre ${characters} Zeichen lang, und Nachrichtendienste kürzen Links über ${most}. Lassen Sie weg, was aufgesteckt ist, oder speichern Sie eine Datei.`,
  codeTooLong:
    "Der Link ist zu lang für einen Code, den eine Kamera quer durch den Raum lesen kann. Lassen Sie etwas weg, oder geben Sie den Link weiter.",
} as const;

export const takeHomeWords = {
  control: "Mitnehmen",
  keys: "T",
  does: "die Beispielperson als Link und Code, zum Mitnehmen für den Kurs",
  title: "Zum Mitnehmen für den Kurs",
  lead: "Wer den Link öffnet, bekommt diese Beispielperson auf das eigene Gerät und kann selbst planen und polstern.",
} as const;

export const compareWords = {
  title: (title: string): string => `${title} vergleichen`,
  with: "Mit",
  none: "Es gibt keine andere Anprobe zum Vergleichen.",
  reading: "Maß",
  before: "damals",
  after: "jetzt",
  change: "Änderung",
  same: "gleich",
  onlyThen: "jetzt nicht gemessen",
  onlyNow: "damals nicht gemessen",
  bodies: "Maße der Person",
  summary: (changed: number, all: number): string =>
    changed === 0 ? `Alle ${all} Maße sind gleich.` : `${changed} von ${all} Maßen haben sich geändert.`,
  asks: (left: string): string => (left === "" ? "" : `Was bei der späteren zu tun ist: ${left}.`),
} as const;
