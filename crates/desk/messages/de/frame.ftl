### Was jeder Bildschirm hat.

skip = Zur Arbeit
nav = Bildschirme
nav-finds = Unsere Funde
nav-heaps = Haufen
nav-table = Tabelle
nav-key = Schlüssel
nav-words = Wörter
nav-try = Ausprobieren
nav-print = Drucken
nav-done = Was wir getan haben
margin = Neben der Arbeit
foot = Spinney arbeitet nur auf diesem Rechner: nichts wird irgendwohin geschickt.
foot-rules = Kein Schlüssel macht etwas so sicher, dass man es anfassen, pflücken oder essen darf. Darüber entscheiden die Regeln vor Ort und Leute, die dafür ausgebildet sind.
foot-english = Noch auf Englisch: Fragen, die Spinney aus der Tabelle macht, was zu verbessern ist, die Worterklärungen und die gedruckten Blätter. Fragen in euren eigenen Worten bleiben, wie ihr sie schreibt.
untitled = Eine Sammlung ohne Titel
undo = Rückgängig
redo = Noch einmal
good-to-know = { $count ->
    [one] 1 Sache, die man wissen sollte
   *[other] { $count } Sachen, die man wissen sollte
}
severity-mend = bitte verbessern
severity-look = einen Blick wert
severity-know = gut zu wissen
not-found = Diese Seite gibt es nicht
not-found-remedy = Vielleicht wurde sie rückgängig gemacht oder in einem anderen Fenster entfernt.
refused = Das wurde nicht getan
go-back = Zurück
what-you-typed = Was ihr geschrieben habt
which-key = Welcher Schlüssel?
which-key-show = Zeigen
which-key-finished = fertig
