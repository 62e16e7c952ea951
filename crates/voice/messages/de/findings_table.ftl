### Was beim Lesen einer Tabelle gefunden wurde: in Zellen, in Spalten, in Tabellenblättern und Dateien.

finding-at = { " " }({ $cell })
finding-in = { " " }({ $cell })
finding-this-cell = diese Zelle
finding-row-of-sheet = Zeile { $row } auf dem Tabellenblatt „{ $sheet }“
finding-headings = die Zeile mit den Überschriften
finding-heading = die Überschrift „{ $heading }“
finding-kind-cell = der Name von { $kind }
finding-kind-under = { $kind }, { $about }
finding-row = Zeile { $row }
finding-row-under = Zeile { $row }, { $about }
finding-more-like = { $count ->
    [one] Noch eine Stelle wie diese: { $last }.
   *[other] Dazu { $count } weitere Stellen wie diese. Die letzte: { $last }.
}

## Zellen.
finding-cell-odd = „{ $text }“ bei { $kind } unter „{ $about }“{ $at } { $trouble }. Das zählt wie: Noch niemand hat nachgesehen.
finding-cell-mixed = mischt Wörter und Zahlen
finding-cell-mixed-remedy = Schreibt nur Wörter oder nur Zahlen. Oder schreibt, wie oft ihr jedes gesehen habt: `rot 8, blau 2`.
finding-cell-half-counted = nennt nur bei einigen Wörtern, wie oft sie vorkamen
finding-cell-half-counted-remedy = Schreibt hinter jedes Wort eine Anzahl, `rot 8, blau 2`, oder hinter keines.
finding-cell-shares = nennt Anteile, die zusammen nicht das Ganze ergeben
finding-cell-shares-remedy = Die Anteile müssen zusammen 100 % ergeben. Oder schreibt, wie viele ihr von jedem gesehen habt.
finding-cell-no-count = nennt die Anzahl null oder eine viel zu große
finding-cell-no-count-remedy = Lasst weg, was niemand gesehen hat. Schreibt die Anzahl in Ziffern.
finding-cell-not-a-number = ist weder eine Zahl noch ein Bereich
finding-cell-not-a-number-remedy = Schreibt `40 mm`, `4 cm` oder einen Bereich, `30-60`. Wenn ihr nicht sicher seid, nehmt einen größeren Bereich.
finding-cell-backwards = beginnt mit der größeren Zahl
finding-cell-backwards-turned = Schreibt `{ $turned }`, wenn das gemeint ist. Wenn nicht, fehlt vielleicht eine Ziffer, oder es ist eine zu viel.
finding-cell-backwards-remedy = Schreibt die kleinere Zahl zuerst, und seht nach, ob eine Ziffer fehlt.
finding-cell-one-end = sagt nur, wo der Bereich anfängt oder aufhört
finding-cell-one-end-remedy = Schreibt beide Enden auf, zum Beispiel `5-9` oder `15-20 mm`.
finding-cell-out-of = sagt, wie viele es von wie vielen sind, aber nicht, wie die anderen waren
finding-cell-out-of-remedy = Schreibt von jedem, wie viele ihr gesehen habt, zum Beispiel `rot 3, blau 7` oder `ja 3, nein 7`.
finding-cell-ambiguous = kann Tausend heißen oder ein Komma in einer Zahl sein
finding-cell-ambiguous-either = Schreibt `{ $thousands }` oder, mit Punkt, `{ $decimals }`.
finding-cell-ambiguous-remedy = Schreibt `{ $thousands }`, wenn das gemeint ist. Sonst schreibt einen Punkt statt des Kommas.
finding-cell-a-word = ist ein Wort in einer Spalte mit Zahlen
finding-cell-a-word-remedy = Schreibt eine Zahl oder einen Bereich. Weiß es niemand, schreibt `?`. Gibt es dort keine, schreibt `n/a`.
finding-cell-not-whole = ist keine ganze Zahl, und in dieser Spalte wird gezählt
finding-cell-not-whole-remedy = Schreibt ganze Zahlen, zum Beispiel `5`. Wird gemessen, gebt der Spalte eine Einheit: (mm).
finding-cell-wide = ist zum Zählen ein zu großer Bereich
finding-cell-wide-remedy = Schreibt die Zahlen, die ihr gesehen habt, zum Beispiel `5-7`. Wird gemessen, gebt der Spalte eine Einheit.
finding-cell-below-nothing = ist weniger als nichts
finding-cell-below-nothing-remedy = Messt noch einmal: Keine Länge, kein Gewicht und kein Verhältnis ist kleiner als 0.
finding-cell-other-unit = hat eine Einheit, die zum Rest der Spalte nicht passt
finding-cell-other-unit-remedy = Nehmt in einer Spalte überall dieselbe Art von Einheit.
finding-cell-a-number = ist eine Zahl in einer Spalte mit Wörtern
finding-cell-a-number-remedy = Schreibt eines der Wörter dieser Spalte, oder macht für Zahlen eine eigene Spalte.
finding-cell-neither = ist weder ja noch nein, wie in anderen Zellen dieser Spalte
finding-cell-neither-remedy = Schreibt `ja` oder `nein`. Kommt beides vor, schreibt, wie oft: `ja 3, nein 7`. Gibt es mehr als diese zwei Antworten, nennt alle auf dem Tabellenblatt „characters“ unter „states“.
finding-cell-date = ist ein Datum: Das macht eine Tabellenkalkulation aus einem Bereich
finding-cell-date-remedy = Stellt die Spalte erst auf Text um. Dann schreibt noch einmal `{ $low }-{ $high }`. Auch `{ $low } to { $high }` wird verstanden.
finding-cell-two-measurements = enthält zwei Maße
finding-cell-two-measurements-remedy = Macht zwei Spalten daraus, zum Beispiel Länge und Breite.
finding-cell-read = „{ $text }“ bei { $kind } unter „{ $about }“{ $at } gilt als { $read }.
finding-cell-unknown = „noch niemand hat nachgesehen“
finding-cell-unknown-remedy = Gibt es so etwas bei dieser Art nicht? Dann schreibt `n/a`. Weiß es niemand? Dann schreibt `?`.
finding-cell-each = „das eine oder das andere“, jedes gleich oft
finding-cell-each-own = Schreibt `{ $own }`, mit dem englischen „or“. Oder schreibt, wie oft ihr jedes gesehen habt: `rot 8, blau 2`.
finding-cell-each-remedy = Schreibt, wie oft ihr jedes gesehen habt: `rot 8, blau 2`.
finding-cell-one-range = ein Bereich vom kleinsten zum größten Wert
finding-cell-one-range-remedy = Wenn auch alles dazwischen vorkommen kann, ist nichts zu tun. Ein Maß hat nur einen Bereich.
finding-cell-state = ein Wort wie die anderen der Spalte
finding-cell-state-remedy = Schreibt das Wort, das hier gemeint ist, oder macht für ja und nein eine eigene Spalte.
finding-cell-to-see = ein Wort für etwas, das man sieht
finding-cell-to-see-remedy = Hat noch niemand nachgesehen, schreibt dort `?`.
finding-cell-word = ein Wort
finding-cell-word-remedy = In manchen Bilderschriften ist das ein Haken oder ein Kreuz. Ist es eines davon, schreibt ja oder nein.
finding-cell-error = „{ $text }“ bei { $kind } unter „{ $about }“{ $at } habt nicht ihr geschrieben: Die Tabellenkalkulation { $why }. Das zählt wie: Noch niemand hat nachgesehen.
finding-cell-error-remedy = Schreibt das Wort oder die Zahl selbst hinein.
finding-cell-lost-cell = hat die Zelle verloren, aus der es kam
finding-cell-not-found = hat nicht gefunden, was sie nachschlagen sollte
finding-cell-cannot-calculate = kann mit dem, was dort stand, nicht rechnen
finding-cell-unknown-word = kennt ein Wort in einer Formel nicht
finding-cell-divided = sollte durch null teilen
finding-cell-no-number = hat eine Zahl herausbekommen, die keine ist
finding-cell-lost-cells = hat die Zellen verloren, aus denen es kam
finding-cell-undeclared = „{ $state }“{ $in } gehört nicht zu den Möglichkeiten, die auf dem Tabellenblatt „characters“ für „{ $about }“ aufgezählt sind. Es kommt als weitere dazu.
finding-cell-undeclared-remedy = Zählt es dort mit auf, oder berichtigt die Schreibweise in der Tabelle.
finding-cell-alike = „{ $one }“ und „{ $other }“{ $at } unter „{ $about }“ sehen aus wie ein Wort in zwei Schreibweisen. Sie gelten als zwei.
finding-cell-alike-remedy = Ist dasselbe gemeint, schreibt es gleich. Sind es zwei, nehmt Wörter, die sich mehr unterscheiden.
finding-cell-governed = Bei { $kind } steht etwas unter „{ $about }“{ $at }. Doch nach „{ $above }“ gibt es so etwas dort nicht. Es gilt als „gibt es hier nicht“.
finding-cell-governed-remedy = Schreibt dort `n/a`. Oder berichtigt die andere Zelle oder die Bedingung auf dem Tabellenblatt „characters“.
finding-cell-no-ratio = „{ $about }“ lässt sich bei { $kind } nicht ausrechnen, weil „{ $one }“ oder „{ $other }“ nicht größer als null ist. Das zählt wie: Noch niemand hat nachgesehen.
finding-cell-no-ratio-remedy = Schreibt Längen, die größer als null sind.
finding-cell-and-more = { " " }und noch { $more }
finding-cell-not-recorded = „{ $about }“ hat noch niemand aufgeschrieben: { $kinds }.
finding-cell-not-recorded-remedy = Seht nach und tragt es ein. Gibt es so etwas dort nicht, schreibt `n/a`.
finding-cell-some-have-none = { $kind }: Bei { $none } von { $finds } gibt es „{ $about }“ nicht. Es gilt, was die anderen zeigen.
finding-cell-some-have-none-remedy = Seht sie noch einmal an. Stimmt es, dann passt „{ $about }“ nicht zu { $kind }: Schreibt in jeder Zeile davon `n/a`, oder lasst die Spalte weg.
finding-cell-beside-marks = Unter „{ $about }“ stehen nur Haken, Kreuze oder ja. Leer ist es bei: { $kinds }. Eine leere Zelle bedeutet, dass noch niemand nachgesehen hat.
finding-cell-beside-marks-remedy = Heißt leer hier nein? Dann schreibt dort nein und in die anderen ja.
finding-cell-spoilt = „{ $text }“{ $at } sieht aus, als wären beim Speichern Buchstaben verdorben worden. Heißt es „{ $right }“?
finding-cell-spoilt-remedy = Schreibt es neu, oder speichert die Tabelle aus der Tabellenkalkulation noch einmal, als XLSX.
finding-cell-cut = Die runden Anführungszeichen in Zeile { $row } halten keine Zelle zusammen: Sie wurde am Komma getrennt.
finding-cell-cut-remedy = Nehmt gerade Anführungszeichen: "{ $before }, { $behind }".
finding-cell-far = Die Zelle { $cell } steht weiter rechts als die { $most } Spalten, die gelesen werden.
finding-cell-far-remedy = Setzt sie neben die anderen, oder löscht sie, wenn sie ein Versehen ist.
finding-cell-long = Der Text{ $in } hat mehr als { $most } Zeichen und wurde weggelassen.
finding-cell-long-remedy = Kürzt ihn. In einer CSV-Datei: Seht nach, ob ein Anführungszeichen nicht geschlossen ist.
finding-cell-formula = { $cell } enthält eine Formel. Gelesen wird ihr letztes Ergebnis.
finding-cell-formula-remedy = Kopiert die Spalte und fügt nur die Werte ein, damit sich nichts unbemerkt ändert.
finding-cell-text-lost = { $cell } verweist auf einen Text, der fehlt.
finding-cell-text-lost-remedy = Schreibt die Zelle neu.
finding-cell-shows-error = { $cell } zeigt den Fehler { $error }.
finding-cell-shows-error-remedy = Schreibt den Wert selbst hinein, oder ?, wenn ihn niemand weiß.
finding-cell-made-a-date = { $cell }: Die Tabellenkalkulation hat ein Datum daraus gemacht.
finding-cell-made-a-date-remedy = Stellt die Spalte auf Text um und schreibt den Bereich noch einmal. Auch `3 to 5` wird verstanden.
finding-cell-merged = Verbundene Zellen: { $cell } bis { $to }. „{ $text }“ gilt in jeder von ihnen.
finding-cell-merged-remedy = Stimmt es für jede, ist nichts zu tun. Sonst hebt die Verbindung auf und füllt jede Zelle aus.

## Spalten.
finding-column-twice = Die Überschrift „{ $heading }“ gibt es zweimal. Die zweite ({ $cell }) heißt hier „{ $called }“.
finding-column-twice-remedy = Gebt jeder Spalte eine eigene Überschrift, oder löscht eine der beiden.
finding-column-nameless = { $cell } hat keine Überschrift. Die Spalte heißt hier „{ $called }“.
finding-column-nameless-somewhere = Eine Spalte hat keine Überschrift. Sie heißt hier „{ $called }“.
finding-column-nameless-remedy = Schreibt darüber, worum es in der Spalte geht. Hat ein Komma eine Zahl zerschnitten (2,5), schreibt 2.5 oder setzt sie in Anführungszeichen. Eine verbundene Überschrift gilt nur für ihre erste Spalte.
finding-column-touch = „{ $about }“ gilt als etwas, das Kinder anfassen.
finding-column-touch-remedy = Schreibt auf dem Tabellenblatt „characters“ unter „by touch“ ja oder nein.
finding-column-in-order = Die Möglichkeiten von „{ $about }“ gelten als geordnet, so wie die Tabelle sie nennt: { $states }.
finding-column-in-order-remedy = Schreibt sie auf dem Tabellenblatt „characters“ unter „states“ in ihrer Reihenfolge auf.
finding-column-margin = Der Sicherheitsabstand von „{ $about }“ hat eine andere Einheit als die Spalte.
finding-column-margin-remedy = Schreibt den Sicherheitsabstand in der Einheit der Spalte.
finding-column-numbered = Die Zahlen hinter den Wörtern unter „{ $about }“ gelten als Teil der Namen.
finding-column-numbered-remedy = Wurde damit gezählt, schreibt in mindestens eine Zelle `rot 8, blau 2`.
finding-column-number-words = Die Wörter unter „{ $about }“, zum Beispiel „{ $text }“{ $at }, gelten als Zahlen.
finding-column-number-words-remedy = Schreibt Ziffern. Sind es nur Namen, schreibt auf dem Tabellenblatt „characters“ unter „values“: words.
finding-column-too-many-counts = In „{ $about }“ soll gezählt werden, aber es gibt mehr als { $most } verschiedene Zahlen. Es gilt als Maß ohne Einheit und ohne Sicherheitsabstand.
finding-column-too-many-counts-remedy = Gebt der Spalte auf dem Tabellenblatt „characters“ eine Einheit, oder nehmt Arten mit vielen Zahlen in eine andere Tabelle.
finding-column-unit-of-others = { $cell } hat keine Einheit. Gelesen wird in { $unit }, wie in anderen Zellen unter „{ $about }“.
finding-column-unit-assumed = Die Zahlen unter „{ $about }“ haben keine Einheit, zum Beispiel hier: { $cell }. Gelesen werden sie in { $unit }.
finding-column-unit-remedy = Schreibt die Einheit in die Überschrift, zum Beispiel (mm) oder (cm), oder auf das Tabellenblatt „characters“. Wurde gezählt, schreibt dort: count.
finding-column-no-unit = „{ $about }“ gilt als gemessen und nicht als gezählt, und zwar wegen { $because }. In welcher Einheit? Das sagt niemand. Darum gibt es keine Einheit und keinen Sicherheitsabstand.
finding-column-no-unit-remedy = Schreibt die Einheit in die Überschrift, zum Beispiel (mm) oder (cm). Wurde gezählt, schreibt ganze Zahlen. Gibt es keine Einheit, schreibt auf dem Tabellenblatt „characters“ unter „unit“: none.
finding-column-because-cell = „{ $text }“ bei { $kind }{ $at }
finding-column-because-many = mehr als { $most } verschiedenen Zahlen darin
finding-column-remarks = „{ $about }“ enthält Sätze, bei jeder Art einen anderen, und wurde weggelassen. Daraus wird keine Frage.
finding-column-remarks-remedy = Sind es Bemerkungen, ist nichts zu tun. Ist es ein Merkmal, beschreibt es mit wenigen Wörtern, die für mehrere Arten passen.
finding-column-notes = „{ $about }“ enthält mehr als { $most } verschiedene Texte. Darum gilt es als Bemerkung und wurde weggelassen.
finding-column-notes-remedy = Ist es ein Merkmal, beschreibt es mit wenigen Wörtern, die für mehrere Arten passen.
finding-column-states = Bei „{ $about }“ ist eine Möglichkeit zweimal genannt, oder es sind mehr als { $most }.
finding-column-states-remedy = Nennt jede nur einmal.
finding-column-no-ratio = „{ $about }“{ $at } lässt sich nicht ausrechnen: { $why }.
finding-column-no-ratio-remedy = Schreibt zwei Spalten mit Längen: `Länge / Breite`.
finding-column-ratio-no-column = „{ $name }“ ist keine Spalte der Tabelle
finding-column-ratio-not-two = „{ $text }“ nennt keine zwei Spalten
finding-column-ratio-of-a-ratio = Eine der beiden ist selbst ein Verhältnis
finding-column-ratio-not-measured = „{ $name }“ ist nicht gemessen
finding-column-ratio-itself = Es ist beide Male dieselbe Spalte
finding-column-ratio-units = Die beiden sind in verschiedenen Einheiten gemessen
finding-column-no-condition = Die Bedingung von „{ $about }“{ $at } { $why }.
finding-column-no-condition-remedy = Schreibt eine andere Spalte mit Wörtern und einige ihrer Möglichkeiten: `Form = gefiedert / gefingert`.
finding-column-condition-no-column = nennt „{ $name }“, und das ist keine Spalte der Tabelle
finding-column-condition-numbers = nennt „{ $name }“, und dort stehen Zahlen, keine Wörter
finding-column-condition-no-state = nennt „{ $state }“, und das kommt unter „{ $name }“ nicht vor
finding-column-condition-no-states = nennt nichts, was unter „{ $name }“ vorkommt
finding-column-condition-itself = führt zu ihr selbst zurück
finding-column-does-not-apply = { $count ->
    [one] 1 leere Zelle unter „{ $about }“ gilt als „gibt es hier nicht“, weil „{ $above }“ das sagt.
   *[other] { $count } leere Zellen unter „{ $about }“ gelten als „gibt es hier nicht“, weil „{ $above }“ das sagt.
}
finding-column-does-not-apply-remedy = Nichts ist zu tun. Oder schreibt `n/a` hinein, damit es deutlich ist.
finding-column-no-room = „{ $about }“ passt nicht mehr hinein und wurde weggelassen.
finding-column-no-room-remedy = Teilt die Tabelle in mehrere, oder schreibt weniger Möglichkeiten in eine Zelle.
finding-column-read-right-strange = Wie oft „{ $about }“ richtig erkannt wird{ $at }, ist für „{ $name }“ angegeben. Das ist keine Art der Tabelle.
finding-column-read-right-strange-remedy = Schreibt es wie in der Tabelle, oder streicht es.
finding-column-read-right-twice = Wie oft „{ $about }“ richtig erkannt wird{ $at }, ist für „{ $name }“ zweimal angegeben. Es gilt das erste Mal.
finding-column-read-right-twice-remedy = Nennt jede Art nur einmal.

## Tabellenblätter und Dateien.
finding-sheet-odd = „{ $text }“{ $in } ist { $what }.
finding-sheet-one-of-remedy = Schreibt { $before } oder { $last }.
finding-sheet-some-of-remedy = Schreibt eines oder mehrere davon: { $words }.
finding-sheet-values = keine Art von Werten
finding-sheet-unit = keine Einheit
finding-sheet-unit-of-ratio = keine Einheit eines Verhältnisses
finding-sheet-unit-of-ratio-remedy = Lasst es leer: Eine Länge geteilt durch eine Länge hat keine Einheit.
finding-sheet-margin = kein Sicherheitsabstand
finding-sheet-margin-remedy = Schreibt eine Zahl, zum Beispiel 5 mm.
finding-sheet-seen-on = nichts, woran man es sieht
finding-sheet-difficulty = keine Schwierigkeit
finding-sheet-per-cent = kein Anteil in Prozent
finding-sheet-per-cent-remedy = Schreibt eine Zahl von 0 bis 100 und dahinter Arten, bei denen es anders ist: `90; Stechpalme 60`.
finding-sheet-yes-or-no = weder ja noch nein
finding-sheet-by-touch-remedy = Schreibt ja, wenn Kinder es anfassen müssen, sonst nein.
finding-sheet-in-order-remedy = Schreibt ja, wenn die Möglichkeiten eine Reihenfolge haben.
finding-sheet-season = keine Jahreszeit
finding-sheet-instrument = kein Werkzeug
finding-sheet-condition = keine Bedingung
finding-sheet-condition-remedy = Schreibt eine andere Spalte und ihre Möglichkeiten: `Form = gefiedert / gefingert`.
finding-sheet-times-met = keine Anzahl über null
finding-sheet-times-met-remedy = Schreibt eine Zahl, oder often (oft), sometimes (manchmal) oder rarely (selten). Eine Art, die niemand antrifft, lasst weg.
finding-sheet-how-many = keine Anzahl von Kindern oder Gruppen
finding-sheet-how-many-remedy = Schreibt eine ganze Zahl von 1 bis { $most }, ohne Wörter.
finding-sheet-row-not-read = „{ $text }“ auf dem Tabellenblatt „{ $sheet }“ wird nicht gelesen.
finding-sheet-row-not-read-remedy = Nichts ist zu tun, oder nennt es { $before } oder { $last }.
finding-sheet-column-not-read = Die Spalte „{ $heading }“ auf dem Tabellenblatt „{ $sheet }“ wird nicht gelesen.
finding-sheet-column-not-read-remedy = Nichts ist zu tun, oder nehmt eine dieser Überschriften: { $usual }.
finding-sheet-no-character = Die Spalte „{ $name }“{ $at } gibt es in der Tabelle nicht.
finding-sheet-no-kind-there = Die Art „{ $name }“{ $at } gibt es in der Tabelle nicht.
finding-sheet-not-there-remedy = Schreibt es wie in der Tabelle, oder löscht die Zeile.
finding-sheet-second-character = Die Spalte „{ $name }“ hat noch eine Zeile{ $in }. Es gilt die erste.
finding-sheet-second-kind = Die Art „{ $name }“ hat noch eine Zeile{ $in }. Es gilt die erste.
finding-sheet-second-remedy = Behaltet eine der beiden Zeilen.
finding-sheet-not-closed = In Zeile { $row } fängt ein Anführungszeichen an{ $at } und hört nicht auf. Darum steckt der Rest der Tabelle in dieser Zelle.
finding-sheet-not-closed-remedy = Nehmt das Anführungszeichen heraus, oder schließt es.
finding-sheet-title = „{ $title }“ steht allein über den Überschriften und gilt als Titel.
finding-sheet-title-remedy = Ist es einer, ist nichts zu tun. Ein Titel zum Drucken gehört auf das Tabellenblatt „about“.
finding-sheet-counts-rows = Die erste Spalte zählt die Zeilen und wurde weggelassen. Die Namen der Arten kommen aus der nächsten, „{ $kinds }“.
finding-sheet-counts-rows-headed = Die erste Spalte, „{ $heading }“, zählt die Zeilen und wurde weggelassen. Die Namen der Arten kommen aus der nächsten, „{ $kinds }“.
finding-sheet-counts-rows-remedy = Stimmt das, ist nichts zu tun. Sonst nehmt die Spalte heraus.
finding-sheet-swapped = Zeilen und Spalten sind wohl vertauscht: Die Namen der Arten stehen oben.
finding-sheet-swapped-remedy = Dreht die Tabelle, sodass jede Art eine Zeile hat. In einer Tabellenkalkulation: Kopiert sie und fügt sie mit „Transponieren“ ein.
finding-sheet-no-headings = Zeile { $row } hat keine Überschriften: Dort steht { $says }, wie in den Zeilen darunter.
finding-sheet-no-headings-remedy = Setzt eine Zeile darüber, die sagt, was in jeder Spalte steht, zum Beispiel Art, Rand, Lappen.
finding-sheet-often = Wie oft man eine Art sieht, ist in Worten angegeben: often (oft) zählt 4, sometimes (manchmal) 2, rarely (selten) 1. Eine Art ohne Angabe zählt wie manchmal.
finding-sheet-often-remedy = Schreibt Zahlen, wenn ihr es anders meint.
finding-sheet-file = „{ $file }“ wird nicht gelesen, sondern „{ $read }“.
finding-sheet-file-remedy = Nehmt eine Tabelle nach der anderen herein. Dateien neben einer Tabelle heißen characters, kinds und about.
finding-sheet-left-one = Nur das Tabellenblatt „{ $read }“ wurde gelesen, „{ $first }“ nicht.
finding-sheet-left-two = Nur das Tabellenblatt „{ $read }“ wurde gelesen, „{ $first }“ und „{ $second }“ nicht.
finding-sheet-left-more = Nur das Tabellenblatt „{ $read }“ wurde gelesen, „{ $first }“ und { $more } weitere nicht.
finding-sheet-left-remedy = Gehören seine Zeilen zur Tabelle, kopiert sie unter die anderen. Ist es selbst die Tabelle, zieht es nach vorn. Tabellenblätter neben der Tabelle heißen characters, kinds und about.
finding-sheet-adds-up = Zeile { $row }, „{ $name }“, wurde weggelassen: Sie zählt die anderen zusammen und ist keine Art.
finding-sheet-note = Zeile { $row }, „{ $name }“, wurde weggelassen: Sie ist eine Bemerkung und keine Art.
finding-sheet-no-kind-remedy = Schreibt sie auf ein anderes Tabellenblatt. Ist es doch eine Art, gebt ihr einen anderen Namen.
finding-sheet-nameless = Zeile { $row } hat keinen Namen{ $at } und wurde weggelassen.
finding-sheet-nameless-remedy = Schreibt den Namen der Art hinein. Sind dort Zellen verbunden, hebt das auf und füllt jede Zeile aus.
finding-sheet-too-many-kinds = Die Tabelle hat mehr als { $most } Arten. { $kind } und alle darunter wurden weggelassen.
finding-sheet-too-many-finds = Die Tabelle hat mehr als { $most } Zeilen mit einem Fund. Zeile { $row } und alle darunter wurden weggelassen.
finding-sheet-too-many-finds-remedy = Teilt die Tabelle nach Arten auf und übernehmt einen Teil nach dem anderen.
finding-sheet-split-remedy = Teilt die Tabelle in mehrere, zum Beispiel nach Familien.
finding-sheet-kind-twice = „{ $one }“{ $first } und „{ $other }“{ $second } sind fast gleich geschrieben. Ist es eine Art, oder sind es zwei? Sie gelten als zwei, und die zweite heißt hier „{ $called }“.
finding-sheet-kind-twice-remedy = Löscht eine der Zeilen. Zwei Arten brauchen zwei Namen.
finding-sheet-kind-twice-differ = Löscht eine der Zeilen, oder macht eine daraus: `{ $this } or { $that }` (or ist englisch für oder). Zwei Arten brauchen zwei Namen.
finding-sheet-several-rows = { $count ->
    [one] „{ $kind }“ steht in { $rows } Zeilen{ $first }. Jede davon gilt als eigene Art; die zweite heißt hier „{ $called }“.
   *[other] { $count } Arten stehen in mehreren Zeilen; „{ $kind }“ steht in { $rows }{ $first }. Jede Zeile gilt als eigene Art; die zweite heißt hier „{ $called }“.
}
finding-sheet-several-rows-remedy = Ist jede Zeile ein einzelnes Blatt (oder eine Muschel, ein Tier) ihrer Art? Dann sagt das: mit `--rows leaves` auf der Befehlszeile, auf den Bildschirmseiten mit der Auswahl unter der Tabelle. Wenn nicht: Zwei Arten brauchen zwei Namen.
finding-sheet-find-columns = Welcher Fund eine Zeile ist und woher er kommt, steht unter: { $headings }. Danach wird nicht gefragt.
finding-sheet-find-columns-remedy = Kann man etwas davon ansehen, gebt der Spalte eine andere Überschrift.
finding-sheet-measuring-columns = { $count ->
    [one] „{ $first }“ sagt, wie die Blätter gemessen wurden oder was draußen niemand sehen kann. Danach wird nicht gefragt.
   *[other] { $count } Spalten, als erste „{ $first }“, sagen, wie die Blätter gemessen wurden oder was draußen niemand sehen kann. Danach wird nicht gefragt.
}
finding-sheet-measuring-columns-remedy = Kann man etwas davon ansehen, gebt der Spalte eine andere Überschrift.
finding-sheet-of-no-kind = { $count ->
    [one] Eine Zeile sagt nicht, welche Art es ist{ $first }, und wurde weggelassen.
   *[other] { $count } Zeilen sagen nicht, welche Art es ist, die erste{ $first }; sie wurden weggelassen.
}
finding-sheet-of-no-kind-remedy = Schreibt die Art hinein, sobald jemand sie kennt.
finding-sheet-damaged = Die Datei ist beschädigt. Gelesen wurde nur bis hier: { $cell }.
finding-sheet-damaged-remedy = Öffnet sie in einer Tabellenkalkulation, seht nach, ob alles da ist, und speichert sie noch einmal.
finding-sheet-full = Das Tabellenblatt hat mehr als { $cells } ausgefüllte Zellen oder { $megabytes } MB Text. Bei { $cell } hört das Lesen auf.
