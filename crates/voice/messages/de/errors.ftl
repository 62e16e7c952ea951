### Was nicht ging: eine Tabelle, die sich nicht lesen ließ, ein Blatt, das sich nicht drucken ließ.

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

## Ein Blatt, das sich nicht drucken ließ.
error-not-valid = Aus dem Blatt ließ sich keine PDF-Datei machen, die alle lesen können: { $said }.
error-not-valid-remedy = Druckt stattdessen die Seite für das Handy, und meldet diese Tabelle und diesen Schlüssel: Sie hätten sich drucken lassen müssen.
