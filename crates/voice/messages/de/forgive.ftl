### Schlüssel, die zweifelhaften Arten einen zweiten Platz geben.

forgive-places = Zweite Plätze in diesem Schlüssel
forgive-none-wanted = Es sollte keine geben.
forgive-none-saves = Keiner würde einen Fund retten.
forgive-meant = Eine Art mit einem zweiten Platz kommt an mehr als einem Ende heraus, und das ist so gemeint: Wer die Frage falsch liest, kann sie trotzdem finden.
forgive-right = Wie viele Funde richtig herauskommen
forgive-how-counted = So ist gezählt: Jede Frage wird so oft richtig gelesen, wie die Tabelle sagt, eine wie die andere. Mit einer falschen Antwort geht der Fund verloren, außer wenn die Art auch auf dieser Seite gesucht wird.
forgive-no-sum = Was jeder Platz rettet, ist in diesem Schlüssel gezählt. Mit zweiten Plätzen ist eine andere Reihenfolge der Fragen die beste; darum ergibt es zusammen nicht, was der ganze Schlüssel gewinnt.
forgive-at-most = Wo „höchstens“ steht, wurde die Suche beendet; mit einem größeren --budget geht es weiter.
forgive-too-fine = Die genauen Zahlen zu dieser Tabelle wurden zu groß; von da an wird nichts behauptet. Schreibt rundere Zahlen, oder füllt unbekannte Zellen aus.
forgive-no-key = Kein Schlüssel: Die genauen Zahlen zu dieser Tabelle werden zu groß. Schreibt rundere Zahlen, oder füllt unbekannte Zellen aus.
forgive-place = { $count ->
    [one] Ein zweiter Platz für { $kind } nach „{ $answer }“ bei Frage { $couplet } ({ $question }) rettet { $number } Fund von 100.
   *[other] Ein zweiter Platz für { $kind } nach „{ $answer }“ bei Frage { $couplet } ({ $question }) rettet { $number } Funde von 100.
}
forgive-with = { $count ->
    [0] Ohne zweiten Platz: { $right } von 100{ $most }{ $more }.
    [one] Mit einem zweiten Platz: { $right } von 100{ $most }{ $more }.
   *[other] Mit { $count } zweiten Plätzen: { $right } von 100{ $most }{ $more }.
}
forgive-with-places = { $count ->
    [0] Ohne zweiten Platz: { $right } von 100{ $most }{ $more }: { $places }.
    [one] Mit einem zweiten Platz: { $right } von 100{ $most }{ $more }: { $places }.
   *[other] Mit { $count } zweiten Plätzen: { $right } von 100{ $most }{ $more }: { $places }.
}
forgive-most = { "" } (höchstens { $most })
forgive-more = , { $more } mehr
forgive-no-more = , nicht mehr
forgive-short = { $kind } nach „{ $answer }“ bei „{ $question }“
