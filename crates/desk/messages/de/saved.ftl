### Eine Kopie der Sammlung.

saved-title = Eine Kopie eurer Sammlung
saved-save = Eine Kopie speichern
saved-save-help = Eine Datei mit allem: Funde, Bilder, Tabelle, Schlüssel und alles, was „Was wir getan haben“ sich gemerkt hat. Legt sie auf einen Stick oder schickt sie jemandem aus dem Kollegium.
saved-nothing = Es gibt noch nichts zu speichern.
saved-open = Eine Kopie öffnen
saved-open-help = Wählt eine Datei, die „Eine Kopie speichern“ gemacht hat.
saved-file = Die Datei (ihr Name endet auf .zip)
saved-sure = Ja: was jetzt hier ist, geht, und die Kopie kommt an seine Stelle
saved-opened = Die Kopie ist geöffnet.
saved-lost = { $count ->
    [one] Ein Bild konnte nicht gelesen werden und fehlt.
   *[other] { $count } Bilder konnten nicht gelesen werden und fehlen.
}
saved-in-the-way = Diese Sammlung liegt in einer Datei, und eine Kopie würde sie überschreiben.
saved-in-the-way-remedy = Schließt Spinney, startet es mit einem Doppelklick und öffnet die Kopie dort.
saved-moved = Jemand hat die Sammlung in einem anderen Fenster geändert. Nichts wurde geöffnet.
saved-moved-remedy = Geht zurück, seht euch die Seite noch einmal an und wählt die Datei erneut.
saved-unsure = Nichts wurde geöffnet: die Sammlung hier ist nur im Arbeitsspeicher und wäre weg.
saved-unsure-remedy = Speichert eine Kopie von ihr, wenn ihr sie braucht. Kreuzt dann das Kästchen an und öffnet die andere.
saved-no-file = Es wurde keine Datei gewählt.
saved-no-file-remedy = Wählt eine Datei, die „Eine Kopie speichern“ gemacht hat.
saved-no-copy = Diese Datei ist keine Kopie einer Sammlung.
saved-no-copy-remedy = Wählt eine Datei, die „Eine Kopie speichern“ gemacht hat; ihr Name endet auf .zip.
saved-too-large = Das ist größer, als eine Kopie sein darf.
saved-too-large-remedy = Nehmt zuerst einige Bilder weg, oder nehmt die Befehlszeile: spinney pack und spinney unpack fassen doppelt so viel.
saved-damaged = Diese Kopie ist beschädigt.
saved-damaged-remedy = Holt sie noch einmal: sie wurde unterwegs abgeschnitten oder verändert. Wenn das nicht hilft, rettet der Befehl „spinney rescue“, was davon lesbar ist.
saved-newer = Ein neueres Spinney hat diese Kopie gemacht.
saved-newer-remedy = Öffnet sie mit dem neueren Spinney.
memory-only = Nur im Arbeitsspeicher:
memory-only-save = speichert eine Kopie, bevor ihr schließt
