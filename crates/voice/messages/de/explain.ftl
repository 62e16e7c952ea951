### Warum jede Frage dort gestellt wird, wo sie ist, und was andere kosten würden.

explain-only = Kein anderer Schlüssel ist so gut.
explain-other-questions = { $keys } Schlüssel sind genauso gut; sie machen dieselben Haufen, mit anderen Fragen, die dieselben Arten unterscheiden.
explain-other-heaps = { $keys } Schlüssel sind genauso gut, jeder mit anderen Haufen.
explain-some-other-heaps = { $keys } Schlüssel sind genauso gut; { $others } davon machen andere Haufen, die übrigen fragen etwas anderes, das dieselben Arten unterscheidet.
explain-next-as-good = Schlüssel { $place } von denen mit anderen Haufen: so gut wie der beste
explain-next = Schlüssel { $place } von denen mit anderen Haufen: { $questions } mehr je Fund
explain-not-to-the-end = Nicht zu Ende gesucht: Dazwischen kann es noch andere geben.
explain-here = { $count } Arten sind hier noch möglich: { $heaps }.
explain-both-ways = { $count ->
    [one] 1-mal beides
   *[other] { $count }-mal beides
}
explain-also = Ein zweiter Blick, der sie genauso trennt: { $questions }
explain-opposite = { $question } (nein, wo es hier ja heißt)
explain-instead = Stattdessen, und der Rest des Schlüssels so gut wie möglich:
explain-blocked = Hier lässt sich noch nicht danach fragen, wegen einer Art, die noch möglich ist: { $list }.
explain-nothing-else = Etwas anderes lässt sich hier nicht von allen fragen.
explain-wanted-dear = Ihr wolltet diese Frage hier; eine andere würde weniger kosten.
explain-wanted = Ihr wolltet diese Frage hier; keine kostet weniger.
explain-first-in-table = Andere sind genauso gut. Diese kommt in der Tabelle zuerst.
explain-even = Sie teilt den Haufen gleichmäßiger als die anderen, oder genauso gleichmäßig und leichter.
explain-uneven = „{ $question }“ würde den Haufen gleichmäßiger teilen, aber der ganze Schlüssel würde länger: Es ist schwerer zu sehen, oder was übrig bleibt, ist schwerer zu unterscheiden.
explain-not-by-touch = „{ $question }“ Das würde { $questions } je Fund sparen, aber Kinder müssten anfassen, und in der Hand kann sein: { $kinds }.
explain-more-kinds = { $count ->
    [one] noch eine Art mit Warnung
   *[other] noch { $count } Arten mit Warnung
}
explain-other = { $question } – { $costs } ({ $heaps })
explain-costs-same = kostet gleich viel
explain-saves = spart { $questions } je Fund
explain-costs = kostet { $questions } mehr je Fund
explain-costs-at-least = kostet mindestens { $questions } mehr je Fund
explain-may-save = spart vielleicht bis zu { $questions } je Fund; nicht zu Ende gesucht
