### Was die Befehlszeile über einen Schlüssel sagt: was er braucht, was bewiesen ist, was Wünsche
### kosten.

report-questions = { $count ->
    [one] { $number } Frage
   *[other] { $number } Fragen
}
report-nothing-tells-apart = In dieser Tabelle steht nichts, was diese Arten unterscheidet.
report-mean = Etwa { $questions } je Fund, höchstens { $longest }.
report-not-kept = { $count ->
    [one] Eine eurer Fragen ließ sich nicht behalten; unten steht, warum. Der Schlüssel kommt ohne sie aus.
   *[other] Einige eurer Fragen ließen sich nicht behalten; unten steht, warum. Der Schlüssel kommt ohne sie aus.
}
report-second-proof = Eine zweite Prüfung, die von der Suche nichts weiß, hat den Beweis nachgerechnet und bestätigt ihn.
report-second-every-key = Eine zweite Prüfung, die von der Suche nichts weiß, hat jeden Schlüssel probiert und findet dasselbe.
report-second-none = Dazu gibt es keine zweite Prüfung: Der Schlüssel bringt keinen Beweis mit, und es gibt zu viele Schlüssel, um alle zu probieren.
report-proved = Bewiesen: Kein Schlüssel zu dieser Tabelle braucht weniger.
report-proved-wishes = Bewiesen: Kein Schlüssel zu dieser Tabelle erfüllt eure Wünsche besser.
report-proved-spared = Bewiesen: Niemand muss anfassen, was schaden kann. Kein solcher Schlüssel braucht weniger Fragen.
report-proved-touch-waits = Bewiesen: Angefasst wird erst, wenn nichts anderes mehr trennt. Kein solcher Schlüssel braucht weniger Fragen.
report-stopped-budget = { $count ->
    [one] Nicht als bester bewiesen: Die Suche hörte nach einem Haufen auf.
   *[other] Nicht als bester bewiesen: Die Suche hörte nach { $count } Haufen auf.
}
report-stopped-memory = { $count ->
    [one] Nicht als bester bewiesen: Nach einem Haufen war der Speicher voll, den die Suche haben darf.
   *[other] Nicht als bester bewiesen: Nach { $count } Haufen war der Speicher voll, den die Suche haben darf.
}
report-stopped-overflow = Nicht als bester bewiesen: In dieser Tabelle sind so viele Zellen unbekannt und so viele Zahlen krumm, dass die Suche rundet.
report-could-be-saved = Kein anderer Schlüssel spart mehr als { $part } % der Fragen.
report-larger-budget = Mit einem größeren --budget geht es weiter.
report-larger-memory = Mit einem größeren --memory geht es weiter.
report-rounder-counts = Ein größeres --budget kommt vielleicht näher heran. Mit runderen Zahlen (7 und 3 statt 713 und 311) und weniger unbekannten Zellen lässt sich mehr beweisen.
report-to-look-at = Was zu beheben ist und was sich anzusehen lohnt, in der Tabelle und im Schlüssel

## Was gefragt wird, und was der Schlüssel erreicht.
report-all-columns = Nach allen Spalten lässt sich fragen: { $hand } zeigt sie alle.
report-not-seen = Nicht gefragt, denn { $hand } zeigt es nicht: { $columns }.
report-not-said = Niemand hat gesagt, woran man das sieht; darum wird danach gefragt: { $columns }.
report-hand-in-season = { $hand } im { $season }
report-season = der { $season }
report-the-find = der Fund
report-within = { $count ->
    [one] { $wish }: nach höchstens 1 Frage.
   *[other] { $wish }: nach höchstens { $count } Fragen.
}
report-as-far = , soweit gesucht wurde
report-right = Etwa { $finds } von 100 Funden kommen richtig heraus, wenn jede Spalte so oft richtig abgelesen wird, wie die Tabelle sagt (95, 90 oder 80 von 100 bei leicht, mittel oder schwer, wo sie nichts sagt){ $sure }.
report-new-words = { $count ->
    [one] { $number } neues Wort
   *[other] { $number } neue Wörter
}
report-even = Höchstens { $most } in einer Frage, und zusammen { $met } je Fund{ $sure }.
report-words = { $count ->
    [one] Der ganze Schlüssel braucht { $number } Wort{ $sure }.
   *[other] Der ganze Schlüssel braucht { $number } verschiedene Wörter{ $sure }.
}
report-no-ruler = Niemand braucht ein Lineal.
report-ruler = { $count ->
   *[other] Je Fund wird { $number }-mal ein Lineal gebraucht{ $sure }.
}

## Was Wünsche kosten.
report-costs = kostet { $questions } je Fund
report-costs-about = kostet etwa { $questions } je Fund
report-saves = spart { $questions } je Fund
report-saves-about = spart etwa { $questions } je Fund
report-costs-nothing = kostet nichts
report-costs-about-nothing = kostet fast nichts
report-price = { $wish }: Das { $costs }.
report-price-together = { $wish }: Das { $costs } und lässt zusammen: { $pairs }.
report-price-all = Alle eure Wünsche zusammen: Dieser Schlüssel { $costs }.
report-price-none = Eure Wünsche kosten nichts.
report-wish-kept = Eure Fragen behalten
report-wish-hand = Nur fragen, was { $hand } zeigt
report-wish-never = Nie nach „{ $column }“ fragen
report-wish-touch-allowed = Anfassen lassen, was schaden kann
report-wish-touch = Niemanden anfassen lassen, was schaden kann
report-wish-order = In eurer Reihenfolge fragen
report-wish-early = Der Wunsch „{ $wish }“
report-wish-goals = Eure anderen Ziele zuerst
report-touch-allowed = Anfassen ist erlaubt. Das { $costs }.
report-touch-allowed-nobody = Anfassen ist erlaubt. Das { $costs }, und niemand muss anfassen, was schaden kann.
report-touch-spared = Niemand muss anfassen, was schaden kann, solange etwas anderes trennt. Das { $costs }.
report-touching = { $count ->
    [one] Frage { $questions } geht nur mit Anfassen, obwohl eine Art mit Warnung noch in der Hand sein kann.
   *[other] Die Fragen { $questions } gehen nur mit Anfassen, obwohl eine Art mit Warnung noch in der Hand sein kann.
}
report-nothing-else = Sonst trennt dort nichts.
report-nothing-else-or-kept = Sonst trennt dort nichts, oder ihr habt sie behalten.

## Drum herum.
run-looking = sucht den besten Schlüssel
run-looking-proved = sucht den besten Schlüssel: { $part } % bewiesen
run-writing = schreibt den Schlüssel auf
run-look-at = Was anzusehen ist
run-look-at-old = Im Schlüssel vom letzten Mal
run-mend-first = { $count ->
    [one] Vor dem Drucken: 1 Sache ist zu beheben.
   *[other] Vor dem Drucken: { $count } Sachen sind zu beheben.
}
run-written = In { $folder } geschrieben: { $files }
run-not-written = Nicht geschrieben: { $file }. { $sentence } { $remedy }
run-not-large = Diese Blätter gibt es nicht im Großdruck, sie bleiben, wie sie sind: { $files }
run-is-that = Frage { $question }, „{ $words }“: Ist das „{ $meant }“?
run-yes-or-no = (j/n)
run-yes-words = j, ja
run-no-words = n, nein

## Eine zweite Prüfung eines Schlüssels.
opinion-works = Dieser Schlüssel funktioniert: Jede Art kommt in jeder Form dort heraus, wo sie soll.
opinion-works-apart-from-that = Davon abgesehen funktioniert dieser Schlüssel: Jede Art kommt in jeder Form heraus.
opinion-not-all-checked = An dem, was sich prüfen ließ, ist nichts zu beheben. Aber nicht alles ließ sich prüfen.
opinion-not-yet = Dieser Schlüssel funktioniert noch nicht.

## Was ein Befehl getan hat.
run-open-at = Spinney ist offen: { $address }
run-end-it = Strg-C beendet es.
run-new-collection = { $file } gab es noch nicht: Es ist eine neue, leere Sammlung.
run-invented-walk = Das ist ein erfundener Heckenspaziergang, zum Ausprobieren. Er ist nur im Speicher und ist weg, wenn ihr Spinney beendet, außer ihr speichert auf den Bildschirmseiten eine Kopie; „spinney open DATEI“ hebt eine eigene Sammlung auf.
run-damaged-page = Die Seite, die jetzt aufgeht, rettet in eine neue Datei, was sich noch lesen lässt, und ebenso:
run-damaged-same = Die beschädigte Datei wird nicht verändert.
run-damaged = { $file } ist beschädigt.
run-made-after = Er wurde nach dem { $when } gemacht.
run-steps = { $count ->
    [one] 1 Schritt
   *[other] { $count } Schritte
}
run-pictures = { $count ->
    [one] 1 Bild
   *[other] { $count } Bilder
}
run-packed = { $count ->
    [one] { $what } ist in { $file } gepackt.
   *[other] { $what } sind in { $file } gepackt.
}
run-unpacked = { $count ->
    [one] { $what } ist ausgepackt, in { $file }.
   *[other] { $what } sind ausgepackt, in { $file }.
}
run-saved = { $count ->
    [one] { $what } ist gerettet, in { $file }.
   *[other] { $what } sind gerettet, in { $file }.
}
run-pictures-lost = Bilder, die sich nicht lesen ließen und fehlen: { $number }.
run-not-damaged = In { $file } ist nichts beschädigt. Es wurde keine Datei gemacht.
run-not-changed = { $file } wurde nicht verändert.
run-look-over = Seht durch, was nach dem Schaden kam: Es kann sich auf etwas stützen, das verloren ist.
run-scale-card = Geschrieben: { $file }. Druckt es mit 100 %, fotografiert Blätter darauf, dann: spinney measure foto.jpg
run-scale-strip = Geschrieben: { $file }. Druckt es mit 100 % und schneidet einen Streifen aus. Fotografiert ihn neben dem, was ihr messt, dann: spinney measure foto.jpg
run-template = Geschrieben: { $file }. Füllt je Zeile eine Art aus, dann: spinney key { $file }
run-pocket = Geschrieben: { $file }. Kopiert die Datei auf einen Stick oder ein Tablet, und öffnet sie in einem Browser.
run-understood = { $kinds } und { $columns } gelesen:
run-nothing-yet = noch nichts
run-counted = gezählt, { $span }
run-measured = gemessen, { $span }
run-span = { $low } bis { $high }
run-hedge-walk = Ein Spaziergang an Hecken und Straßen Anfang Oktober, 12 Arten
run-pond-tray = Eine Schale aus dem Teich, 10 Tiere
run-pasta = Zum Aufwärmen: 8 Formen trockener Nudeln
run-demo-best = Der beste Schlüssel aus { $table } ({ $folder }):
run-demo-key = Der Schlüssel in { $key } ({ $folder }/opinion.txt): { $verdict }; { $checked }.
run-demo-works = er funktioniert
run-demo-not-all = nicht alles ließ sich prüfen
run-demo-not-yet = { $count ->
    [one] er funktioniert noch nicht: 1 Sache ist zu beheben
   *[other] er funktioniert noch nicht: { $count } Sachen sind zu beheben
}
run-demo-done = Alles davon ist erfunden; es liegt in { $folder }. Öffnet { $folder }/hedge_walk/best/today.pdf für Papier und { $folder }/hedge_walk/best/phone.html für ein Handy.
