### Eine Kopie der Sammlung.

saved-title = Eine Kopie der Sammlung
saved-save = Kopie speichern
saved-save-help = Eine Datei mit allem: Funde, Bilder, Tabelle, Schlüssel und alles aus „Was wir gemacht haben“. Sie passt auf einen USB-Stick oder in eine Mail an Kolleginnen und Kollegen.
saved-nothing = Es gibt noch nichts zu speichern.
saved-open = Kopie öffnen
saved-open-help = Eine Datei wählen, die mit „Kopie speichern“ gemacht wurde.
saved-file = Die Datei (ihr Name endet auf .zip)
saved-sure = Ja: Was jetzt hier ist, verschwindet. Die Kopie kommt an seine Stelle.
saved-opened = Die Kopie ist geöffnet.
saved-lost = { $count ->
    [one] Ein Bild ließ sich nicht lesen und fehlt.
   *[other] { $count } Bilder ließen sich nicht lesen und fehlen.
}
saved-in-the-way = Diese Sammlung ist in einer Datei gespeichert. Eine Kopie würde sie überschreiben.
saved-in-the-way-remedy = Spinney schließen, mit einem Doppelklick neu starten und die Kopie dort öffnen.
saved-moved = Jemand hat die Sammlung in einem anderen Fenster geändert. Nichts wurde geöffnet.
saved-moved-remedy = Zurückgehen, die Seite noch einmal ansehen und die Datei noch einmal wählen.
saved-unsure = Nichts wurde geöffnet: Die Sammlung hier ist noch nicht gespeichert und wäre weg.
saved-unsure-remedy = Eine Kopie davon speichern, wenn sie noch gebraucht wird. Dann das Kästchen ankreuzen und die andere öffnen.
saved-no-file = Es wurde keine Datei gewählt.
saved-no-file-remedy = Eine Datei wählen, die mit „Kopie speichern“ gemacht wurde.
saved-no-copy = Diese Datei ist keine Kopie einer Sammlung.
saved-no-copy-remedy = Eine Datei wählen, die mit „Kopie speichern“ gemacht wurde. Ihr Name endet auf .zip.
saved-too-large = Das ist größer, als eine Kopie sein darf.
saved-too-large-remedy = Nehmt zuerst einige Bilder heraus. Oder nehmt das Programm Spinney: „spinney pack“ und „spinney unpack“ fassen doppelt so viel.
saved-unreadable = { $count ->
    [one] Ein Bild ist nicht lesbar. Es würde in der Kopie fehlen.
   *[other] { $count } Bilder sind nicht lesbar. Sie würden in der Kopie fehlen.
}
saved-unreadable-remedy = Löscht sie zuerst endgültig. Dann ist in der Kopie alles, was übrig ist.
saved-damaged = Diese Kopie ist beschädigt.
saved-damaged-remedy = Die Datei noch einmal holen: Unterwegs wurde sie abgeschnitten oder verändert. Hilft das nicht, rettet das Programm Spinney, was noch lesbar ist: „spinney rescue“.
saved-newer = Diese Kopie wurde mit einem neueren Spinney gemacht.
saved-newer-remedy = Die Kopie mit dem neueren Spinney öffnen.
memory-only = Noch nicht gespeichert:
memory-only-save = vor dem Schließen eine Kopie speichern
