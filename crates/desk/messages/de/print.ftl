### Drucken.

print-title = Drucken
print-no-key = Noch gibt es nichts zu drucken: zuerst ein Schlüssel.
print-nothing-asked = Noch gibt es nichts zu drucken: dieser Schlüssel hat keine Frage. Sortiert zuerst die Funde auf Haufen, oder lasst dort den Rest finden.
print-set-sheets = Die Blätter für die Gruppe sind zum Sortieren: eine Nummer für jeden Fund, ein leerer Schlüssel zum Schreiben, Streifen zum Ankreuzen.
print-draft = Dieser Schlüssel verliert unterwegs jemanden, darum steht auf jeder Seite DRAFT (Entwurf). Die Seite des Schlüssels zeigt, was zu verbessern ist.
print-today = Alles für heute
print-today-about = Schlüssel, Schaubild, Schilder, Zettel und Streifen in einer Datei, mit einer Seite für die Erwachsenen, die sagt, wie oft was gebraucht wird
print-key-pages = Der Schlüssel
print-key-pages-about = nummerierte Fragen, Vorsicht und Wörter: einer je Gruppe
print-chart = Das Schaubild
print-chart-about = der ganze Schlüssel als Baum, für die Wand: A3, wenn es geht
print-try-out = Blätter zum Ausprobieren
print-try-out-about = Nummernschilder, Zettel, Streifen zum Ankreuzen, ein leerer Schlüssel und die Antworten für die Erwachsenen
print-paper = Papier
print-show = Zeigen
print-files = Andere Dateien
print-phone = Die Seite fürs Telefon (HTML, braucht kein Netz)
print-text = Der Schlüssel als Text
print-json = Der Schlüssel als JSON, für andere Programme
print-csv = Die Tabelle als CSV, für eine Tabellenkalkulation
print-download = Das PDF holen
print-pages = Seiten
print-page = Seite { $page } von { $of }
print-before = Seite davor
print-after = Nächste Seite
