import type { RemoteMove } from "../../app/classRemote/remoteWords";

export const remoteWords = {
  title: "Fernbedienung",
  control: "Fernbedienung",
  noAct: "Diesen Schritt zeigt die Kursansicht.",
  moves: {
    back: "Voriger Schritt",
    forward: "Nächster Schritt",
    cover: "Zahlen verdecken oder zeigen",
  } satisfies { readonly [move in RemoteMove]: string },
  code: "Der Code aus der Kursansicht",
  connect: "Verbinden",
  lead: "Dieses Handy schaltet die Schritte einer Kursansicht weiter, die auf einem Laptop im selben Netz läuft. Öffnen Sie auf dem Laptop die Kursansicht, und drücken Sie R.",
  wrongCode:
    "Das ist nicht der Code aus der Kursansicht. Jeder Code gilt nur einmal. Nach mehreren falschen Versuchen gibt es einen neuen.",
  unreachable: "Der Laptop antwortet nicht. Ist er im selben Netz, und wurde Padwright mit --share gestartet?",
  notOffered:
    "Von hier aus ist keine Kursansicht zu erreichen. Starten Sie Padwright auf dem Laptop mit „npm start -- --share“.",
  lost: "Nicht verbunden. Es wird wieder versucht…",
  over: "Die Kursansicht hat dieses Handy getrennt.",
  notMoved: "Das ist nicht angekommen: Die Kursansicht ist nicht offen.",
  leave: "Trennen",
  passes:
    "Das Handy sendet nur: voriger Schritt, nächster Schritt, verdecken oder zeigen. Es bekommt nur den Satz des Schrittes, ohne Zahlen. Kein Maß, kein Name und keine Notiz wird gesendet. Die Verbindung ist nicht verschlüsselt, und nichts verlässt dieses Netz.",
} as const;

export const classRemoteWords = {
  title: "Ein Handy als Fernbedienung",
  notShared:
    "Kein Handy kann diese Kursansicht erreichen: Das Programm wurde nicht zum Teilen gestartet. Schließen Sie es dort, wo es gestartet wurde, und starten Sie es dort mit „npm start -- --share“. Dann erreichen es Handys im selben Netz.",
  open: "Öffnen Sie auf dem Handy:",
  type: "und tippen Sie diesen Code ein:",
  noNetwork: "Dieser Computer ist in keinem Netz, darum kann ihn kein Handy erreichen.",
  once: "Das erste Handy, auf dem er eingetippt wird, steuert die Kursansicht; danach gilt der Code nicht mehr. Schließen Sie dieses Feld mit R: Der Code bleibt gültig.",
  squares: "Die Adresse und der Code als quadratischer Code",
  paired: "Ein Handy steuert die Kursansicht.",
  notYours: "Ist es nicht Ihres, trennen Sie es: Dann gibt es einen neuen Code.",
  disconnect: "Das Handy trennen",
  stop: "Die Fernbedienung ausschalten",
  opening: "Der Server wird gefragt…",
  failed: "Der Server, über den Padwright hier läuft, antwortet nicht.",
  again: "Noch einmal fragen",
} as const;
