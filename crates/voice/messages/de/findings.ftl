### Was gefunden wurde: was alle Befunde gemeinsam haben, und was über die Worte einer Frage, die
### Form eines Schlüssels und eine Tabelle gesagt wird.

list-and = { $before } und { $last }
list-or = { $before } oder { $last }
list-and-more = { $before } und noch { $count }
list-or-more = { $before } oder noch { $count }
finding-coverage = { $count ->
    [one] { $checked } von 1 Frage an der Tabelle geprüft
   *[other] { $checked } von { $count } Fragen an der Tabelle geprüft
}
finding-quoted = „{ $text }“
finding-asks = fragt „{ $about }“
finding-asks-for = fragt nach „{ $about }“
finding-step = Frage { $question } ({ $answer })
finding-inch = Zoll
finding-inches = Zoll
finding-foot = Fuß
finding-feet = Fuß
finding-range = { $low } bis { $high }
finding-cell = { $about } bei { $kind }
finding-below = weniger als { $figure }
finding-at-least = { $figure } oder mehr
finding-between = mindestens { $from } und weniger als { $below }
finding-nothing-it-can-have = nichts, was dort vorkommen kann
finding-not-of-table = etwas, das nicht in der Tabelle steht
finding-asked-about = { $about } ({ $form })
finding-clauses = { $before }, und { $next }

## Die Worte einer Frage.
finding-the-question = Frage { $question }, „{ $text }“,
finding-the-first-lead = Die erste Aussage von Frage { $question }, „{ $text }“,
finding-the-second-lead = Die zweite Aussage von Frage { $question }, „{ $text }“,
finding-bare = { $called } sagt „{ $word }“. Jedes Kind versteht darunter etwas anderes.
finding-bare-remedy = Nennt eine Länge mit Einheit oder eine Anzahl, oder etwas zum Vergleichen.
finding-compared = { $called } vergleicht mit „{ $word }“. Das haben nicht alle vor sich.
finding-compared-remedy = Vergleicht zwei Teile desselben Fundes, oder nennt eine Länge mit Einheit.
finding-vague = { $called } sagt „{ $word }“. Darüber sind sich nicht alle einig.
finding-vague-remedy = Fragt nach etwas, das alle gleich sehen.
finding-not-yes-no = { $called } lässt sich nicht mit ja oder nein beantworten.
finding-not-yes-no-remedy = Beginnt die Frage mit „Ist“, „Sind“ oder „Hat“.
finding-two-at-once = { $called } fragt nach zwei Dingen auf einmal.
finding-two-at-once-remedy = Fragt hier nach dem einen. Macht für das andere eine eigene Frage.
finding-choice = { $called } lässt zwischen zweien wählen. Darauf ist „ja“ keine Antwort.
finding-choice-remedy = Fragt nach einem von beiden.
finding-negative = { $called } enthält „{ $word }“. Ein „nein“ darauf ist schwer zu verstehen.
finding-negative-remedy = Fragt nach dem, was da ist, und vertauscht die beiden Antworten.
finding-names-kind = { $called } nennt { $kind }: Antworten kann nur, wer { $kind } schon kennt.
finding-names-kind-remedy = Fragt nach etwas, das man an { $kind } sehen kann.
finding-too-many-words = { $called } hat { $words } Wörter.
finding-too-many-words-remedy = Sagt es mit höchstens { $most } Wörtern, oder macht zwei Fragen daraus.
finding-no-unit = { $called } nennt { $number }, aber keine Einheit.
finding-no-unit-remedy = Schreibt die Einheit dahinter: { $number } { $unit }.

## Die Form eines Schlüssels.
finding-touch = { $count ->
    [one] Frage { $question } geht nur mit Anfassen, und { $kinds } kann noch in der Hand sein.
   *[other] Frage { $question } geht nur mit Anfassen, und { $kinds } können noch in der Hand sein.
}
finding-touch-remedy = Die Warnung wird bei dieser Frage gedruckt. Was schaden kann, sollte ein Erwachsener herumreichen. Oder ihr sucht einen Unterschied, den man sieht.
finding-touch-otherwise = Fragt zuerst nach „{ $about }“: Dafür muss niemand etwas anfassen. Die Warnung wird bei dieser Frage gedruckt.
finding-comb = Ab Frage { $question } nehmen { $count } Fragen nacheinander jeweils nur einen Ausgang weg, wie die Zähne eines Kamms.
finding-comb-remedy = Sucht eine Frage, die zwei fast gleich große Haufen macht.
finding-long-path = Der längste Weg hat { $longest } Fragen. Mit zwei gleich großen Haufen bei jeder Frage wären es bei { $kinds } Arten nur etwa { $even }.
finding-long-path-remedy = Stellt Fragen, die zwei fast gleich große Haufen machen, oder macht zwei Schlüssel.
finding-good-question = Frage { $question } ist gut: Die Antwort sieht man, sie ist bei allen { $kinds } Arten klar, und die Frage trennt die Arten gut.
finding-good-question-remedy = Behaltet sie.

## Eine Tabelle ohne Schlüssel.
finding-not-separable = Nichts in der Tabelle unterscheidet { $kinds }.
finding-not-separable-remedy = Sucht einen Unterschied und schreibt ihn als neue Spalte auf, oder lasst sie zusammen.
finding-blocked = { $kinds } bleiben zusammen: { $because }.
finding-blocked-remedy = Schreibt eine Spalte dazu, nach der man bei allen fragen kann, oder lasst sie zusammen.
finding-blocked-fill-in = Tragt ein: { $cells }. Oder schreibt eine Spalte dazu, nach der man bei allen fragen kann.
finding-blocked-because = { $about } unterscheidet { $them }, passt aber nicht { $whom }
finding-blocked-them = sie
finding-blocked-without = { $count ->
   *[other] für { $kinds } (das gibt es dort nicht)
}
finding-blocked-perhaps = { $count ->
   *[other] für { $kinds } (das gibt es dort vielleicht nicht)
}
finding-blocked-between = { $count ->
   *[other] für { $kinds } (die Messung liegt dazwischen)
}
finding-fragile-hard-and-close = Nur „{ $about }“ unterscheidet { $kinds }. Das ist schwer zu sehen, und die Messungen liegen nah beieinander.
finding-fragile-hard = Nur „{ $about }“ unterscheidet { $kinds }. Das ist schwer zu sehen.
finding-fragile-close = Nur „{ $about }“ unterscheidet { $kinds }. Die Messungen liegen nah beieinander.
finding-fragile-remedy = Sucht einen zweiten Unterschied und schreibt ihn als neue Spalte auf.
finding-too-narrow = Nur „{ $about }“ könnte { $one } von { $other } unterscheiden ({ $ranges }). Doch der Unterschied ist kleiner als der doppelte Sicherheitsabstand von { $margin }. Darum bleiben sie zusammen.
finding-too-narrow-remedy = Sucht einen anderen Unterschied, etwa die Farbe, Haare oder den Geruch, und schreibt ihn als neue Spalte auf.
finding-too-narrow-open = Sucht einen anderen Unterschied. Noch niemand hat nachgesehen: { $cells }.
finding-smaller-margin = Oder macht den Sicherheitsabstand von „{ $about }“ kleiner, wenn ihr so genau messt: bei der Spalte, oder im Terminal mit --gap 2.
finding-more-too-narrow = { $count ->
    [one] Noch 1 Paar unterscheidet sich nur in einer Messung, und zwar um weniger als den doppelten Sicherheitsabstand. Es bleibt zusammen.
   *[other] Noch { $count } Paare unterscheiden sich nur in einer Messung, und zwar um weniger als den doppelten Sicherheitsabstand. Sie bleiben zusammen.
}
finding-more-too-narrow-remedy = { $count ->
   *[other] Sucht einen Unterschied, der viele davon trennt, und schreibt ihn als neue Spalte auf.
}
finding-unknown = { $count ->
    [one] In 1 Zelle hat noch niemand nachgesehen: { $cells }.
   *[other] In { $count } Zellen hat noch niemand nachgesehen: { $cells }.
}
finding-unknown-more = { $count ->
    [one] ; dazu eine weitere Spalte
   *[other] ; dazu { $count } weitere Spalten
}
finding-unknown-remedy = { $count ->
   *[other] Seht euch diese Arten an und tragt ein, was ihr seht. Bis dahin kommen sie bei einer Frage danach auf beiden Seiten heraus.
}
finding-too-many-groups = Es gibt zu viele Gruppen von Arten, die nichts unterscheidet, um alle zu nennen.
finding-too-many-kinds = Es sind zu viele Arten, um jede mit jeder zu vergleichen. Gesucht wurde nur nach Arten mit gleichen Zeilen.
finding-too-many-remedy = Macht eine kleinere Tabelle, für einen Ort und eine Gruppe von Arten.
