### Was nicht ging: eine Datei, die sich nicht lesen oder schreiben ließ, ein Blatt, das sich nicht drucken ließ.

## Eine Tabelle, die sich nicht lesen ließ.
error-not-a-table = { $file } sieht nicht wie eine Tabelle aus: Es ist { $what }.
error-old-format = { $file } ist { $format } und lässt sich hier nicht lesen.
error-old-format-remedy = Öffnet die Datei mit einer Tabellenkalkulation und speichert sie als XLSX oder CSV.
error-office = eine ältere Office-Datei
error-open-document = eine OpenDocument-Datei
error-protected = { $file } ist mit einem Passwort geschützt.
error-protected-remedy = Speichert eine Kopie ohne Passwort.
error-too-large = { $file } ist größer, als eine Tabelle mit Arten sein kann, oder ist ausgepackt viel größer.
error-too-large-remedy = Kopiert nur die Tabelle, ohne Bilder, in eine neue Arbeitsmappe, oder speichert sie als CSV.
error-other-sheet = Das erste Blatt, „{ $sheet }“, ist keine Tabelle. Das Blatt „{ $other }“ sieht wie eine aus.
error-other-sheet-remedy = Zieht dieses Blatt in der Tabellenkalkulation an die erste Stelle, und speichert sie.
error-other-part = { $file } ist das Blatt { $is } und nicht das Blatt { $wanted }.
error-other-part-remedy = Gebt es als das Blatt an, das es ist: characters, kinds oder about.
error-broken = { $file } ist eine beschädigte Arbeitsmappe.
error-broken-remedy = Öffnet die Datei mit einer Tabellenkalkulation und speichert sie noch einmal, oder als CSV.
error-no-kinds = In { $file } stehen noch keine Arten.
error-no-kinds-remedy = Schreibt je Zeile eine Art, den Namen in die erste Spalte, unter eine Zeile mit Überschriften.
error-no-kind-column = Keine Spalte von { $file } sagt, von welcher Art ein Fund ist.
error-no-kind-column-remedy = Fügt eine Spalte mit der Überschrift `kind` (Art) ein und schreibt zu jedem Fund die Art hinein.
error-does-not-fit = Hier steht mehr, als hineingeht: { $place }.
error-does-not-fit-remedy = Nehmt nur herein, was der Schlüssel braucht, ein Blatt nach dem anderen. Es wurde nichts hereingenommen.

## Was eine Datei ist, die statt einer Tabelle kam.
error-is-empty = eine leere Datei
error-is-pdf = ein PDF
error-is-pdf-remedy = Ein PDF ist für Papier gemacht. Nehmt die Tabellenkalkulation, aus der es gemacht wurde, oder tippt die Tabelle als CSV, je Zeile eine Art.
error-is-picture = ein Bild
error-is-photograph = ein Foto
error-is-picture-remedy = Spinney kann in einem Bild keine Schrift lesen. Tippt die Tabelle in eine Tabellenkalkulation.
error-is-text-document = ein Textdokument
error-is-word = ein Word-Dokument
error-is-word-remedy = Kopiert die Tabelle daraus in eine Tabellenkalkulation, und speichert diese als XLSX oder CSV.
error-is-libre-office = eine LibreOffice-Datei, die sich hier nicht lesen lässt
error-is-libre-office-remedy = Öffnet sie dort, und macht mit „Speichern unter“ eine XLSX oder CSV daraus.
error-is-numbers = eine Numbers-Datei, die sich hier nicht lesen lässt
error-is-numbers-remedy = Öffnet sie in Numbers, wählt „Exportieren“ und dann Excel oder CSV.
error-is-google-sheet = ein Verweis auf eine Google-Tabelle, und die Tabelle ist nicht darin
error-is-google-sheet-remedy = Öffnet sie im Browser und wählt Datei, Herunterladen, Microsoft Excel.
error-is-excel-lock = was Excel anlegt, solange die Tabelle offen ist
error-is-excel-lock-remedy = Nehmt die Tabelle selbst: Sie heißt genauso, nur ohne ~$.
error-is-database = eine Datenbank
error-is-packed = eine gepackte Sammlung
error-is-spreadsheet = eine Tabellenkalkulation
error-is-zip = eine ZIP-Datei ohne Blätter
error-is-zip-remedy = Ist die Tabelle darin, dann packt sie zuerst aus, und nehmt die Tabelle allein.
error-is-not-text = kein Text
error-is-web-page = eine Webseite
error-is-json = eine Datei, die Programme austauschen (JSON)
error-is-key = ein Schlüssel in Worten
error-is-writing = ein Text ohne Zeilen und Spalten
error-is-lined-up = ein Text, dessen Spalten mit Leerzeichen ausgerichtet sind
error-is-lined-up-remedy = Setzt ein Komma zwischen die Zellen, oder tippt sie in eine Tabellenkalkulation: je Zeile eine Art.
error-is-other-remedy = Nehmt eine Tabellenkalkulation, die als XLSX oder CSV gespeichert ist, oder fügt ihre Zellen ein: je Zeile eine Art, der Name zuerst, unter einer Zeile mit Überschriften.

## Eine Datei mit einem Schlüssel, wie Programme sie austauschen.
error-key-file-not-ours = { $file } ist kein Schlüssel, wie Spinney ihn schreibt: Zeile { $line }, Stelle { $column }, lässt sich nicht lesen.
error-key-file-not-ours-remedy = Nehmt die Datei key.json, die „spinney key“ geschrieben hat, oder den Schlüssel in Worten.
error-key-file-cut-off = { $file } ist beschädigt: Die Datei hört mitten in Zeile { $line } auf.
error-key-file-cut-off-remedy = Kopiert sie noch einmal, oder macht sie mit „spinney key“ noch einmal.
error-key-file-unknown = In { $file } steht etwas, das dieses Spinney nicht kennt: „{ $field }“.
error-key-file-unknown-remedy = Vielleicht stammt es aus einem neueren Spinney: Nehmt das neuere, oder den Schlüssel in Worten, key.txt.
error-key-file-no-key = In { $file } steht kein Schlüssel.
error-key-file-no-key-remedy = Nehmt die Datei key.json, die „spinney key“ geschrieben hat, oder den Schlüssel in Worten.
error-key-file-disagree = In { $file } steht { $number } als { $field }, aber { $exact } als { $field }_exact; niemand weiß, was gemeint ist.
error-key-file-disagree-remedy = Lasst die genaue Zahl weg, oder schreibt den Schlüssel noch einmal, statt die Datei von Hand zu ändern.
error-key-file-line = In { $file } steht ein Beweis mit der Zeile „{ $line }“, die niemand lesen kann.
error-key-file-line-remedy = Schreibt den Schlüssel noch einmal, statt die Datei von Hand zu ändern.
error-key-file-form = In { $file } steht ein Beweis in Form { $form }, die dieses Spinney nicht lesen kann.
error-key-file-form-remedy = Nehmt das neuere Spinney, oder macht den Schlüssel aus seiner Tabelle noch einmal.
error-key-file-cost = In { $file } steht als { $field } etwas, das keine Zahl von Fragen ist.
error-key-file-cost-remedy = Schreibt den Schlüssel noch einmal, statt die Datei von Hand zu ändern.

## Eine Zeile eines Journals, und eine gepackte Sammlung.
error-line-newer = Ein neueres Spinney hat diese Sammlung geschrieben: Ihre Zeilen haben Form { $form }.
error-line-newer-remedy = Öffnet sie mit dem neueren Spinney, mit dem sie gemacht wurde.
error-line-damaged = Ein Schritt dieser Sammlung ist beschädigt.
error-line-damaged-remedy = „spinney rescue“ rettet in eine neue Datei, was sich noch lesen lässt. Diese Datei wurde nicht verändert.
error-packed-not = { $file } ist keine gepackte Sammlung.
error-packed-not-remedy = Nehmt eine Datei, die „spinney pack“ gemacht hat.
error-packed-too-large = { $file } ist größer, als eine gepackte Sammlung sein darf.
error-packed-too-large-remedy = Kopiert stattdessen die Datei der Sammlung selbst, oder nehmt Bilder heraus.
error-packed-cut-off = { $file } ist beschädigt: Die Datei hört mittendrin auf.
error-packed-cut-off-remedy = Kopiert sie noch einmal von dort, wo sie herkam. „spinney rescue“ rettet, was sich noch lesen lässt.
error-packed-damaged = { $file } ist beschädigt.
error-packed-damaged-remedy = Holt die Datei noch einmal: Unterwegs wurde sie abgeschnitten oder verändert. „spinney rescue“ rettet, was sich noch lesen lässt.

## Eine leere Tabelle, die sich nicht machen ließ.
error-template-date = „{ $date }“ ist kein Datum.
error-template-date-remedy = Schreibt es als Jahr, Monat und Tag: 2026-10-03.
error-template-writer = Die Arbeitsmappe ließ sich nicht schreiben: { $said }.
error-template-writer-remedy = Das ist ein Fehler in Spinney selbst; bitte meldet ihn denen, die es machen.

## Die Datei einer Sammlung, die sich nicht öffnen oder schreiben ließ.
error-kept-missing = Es gibt keine Datei { $file }.
error-kept-missing-remedy = Seht nach, ob der Name so geschrieben ist wie auf dem Datenträger.
error-kept-exists = Es gibt schon eine Datei { $file }.
error-kept-exists-remedy = Wählt einen anderen Namen, oder öffnet die Datei, die es gibt.
error-kept-no-collection = { $file } ist keine Sammlung von Spinney.
error-kept-no-collection-remedy = Nehmt die Datei einer Sammlung; eine Tabelle kommt auf der Seite „Unsere Funde“ herein.
error-kept-newer = { $file } stammt aus einem neueren Spinney.
error-kept-newer-remedy = Öffnet die Datei mit dem neueren Spinney, mit dem sie gemacht wurde.
error-kept-read-only = In { $file } darf hier nichts geschrieben werden.
error-kept-read-only-remedy = Kopiert die Datei in einen eigenen Ordner, und öffnet die Kopie. Es wurde nichts verändert.
error-kept-locked = Ein anderes Programm benutzt gerade { $file }.
error-kept-locked-remedy = Schließt das andere Programm, oder wartet, bis es fertig ist, und versucht es noch einmal. Es wurde nichts verändert.
error-kept-full = Der Datenträger ist voll: { $file } kann nicht wachsen.
error-kept-full-remedy = Macht Platz auf dem Datenträger, und versucht es noch einmal. Es wurde nichts verändert, und nichts ging verloren.
error-kept-damaged = { $file } ist beschädigt.
error-kept-damaged-remedy = „spinney rescue“ rettet in eine neue Datei, was sich noch lesen lässt. Diese Datei wurde nicht verändert.
error-kept-moved = Ein anderes Programm hat die Sammlung gerade verändert.
error-kept-moved-remedy = Seht sie euch an, wie sie jetzt ist, und versucht es noch einmal.
error-kept-rewritten = Ein anderes Programm hat gerade etwas endgültig gelöscht.
error-kept-rewritten-remedy = Seht sie euch an, wie sie jetzt ist, und versucht es noch einmal.
error-kept-other = { $file } ließ sich nicht lesen oder schreiben: { $why }.
error-kept-other-remedy = Seht nach, ob der Datenträger noch da ist und Platz hat, und versucht es noch einmal.

## Ein Blatt, das sich nicht drucken ließ.
error-not-valid = Aus dem Blatt ließ sich keine PDF-Datei machen, die alle lesen können: { $said }.
error-not-valid-remedy = Druckt stattdessen die Seite für das Handy, und meldet diese Tabelle und diesen Schlüssel: Sie hätten sich drucken lassen müssen.
