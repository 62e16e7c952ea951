### Drucken.

print-title = Drucken
print-no-key = Es gibt noch nichts zu drucken. Zuerst braucht es einen Schlüssel.
print-nothing-asked = Es gibt noch nichts zu drucken: Dieser Schlüssel hat keine Frage. Zuerst die Funde auf Haufen sortieren oder dort den Rest finden lassen.
print-set-sheets = Die Arbeitsblätter für die Gruppe sind zum Sortieren: eine Nummer für jeden Fund, ein leerer Schlüssel zum Ausfüllen, Streifen zum Ankreuzen.
print-draft = In diesem Schlüssel geht unterwegs ein Fund verloren. Darum steht auf jeder Seite ENTWURF. Auf der Seite „Schlüssel“ steht, was zu beheben ist.
print-today = Alles für heute
print-today-about = Schlüssel, Schaubild, Schilder, Zettel und Streifen in einer Datei. Eine Seite für Erwachsene sagt, wie viel wovon zu kopieren ist.
print-key-pages = Der Schlüssel
print-key-pages-about = nummerierte Fragen, Warnungen und die Wörter: einmal je Gruppe
print-chart = Das Schaubild
print-chart-about = der ganze Schlüssel als Baum, für die Wand: möglichst auf A3
print-try-out = Zum Ausprobieren
print-try-out-about = Nummernschilder, Zettel, Streifen zum Ankreuzen, ein leerer Schlüssel und die Lösungen für Erwachsene
print-paper = Papier
print-show = Zeigen
print-files = Andere Dateien
print-phone = Die Seite fürs Handy (HTML, geht ohne Internet)
print-text = Der Schlüssel als Text
print-json = Der Schlüssel als JSON, für andere Programme
print-csv = Die Tabelle als CSV, für eine Tabellenkalkulation
print-download = PDF herunterladen
print-pages = Seiten
print-page = Seite { $page } von { $of }
print-before = Vorige Seite
print-after = Nächste Seite
