### Wo eine Tabelle schwach ist, und was als Nächstes anzusehen ist.

weak-kinds = { $count ->
    [one] 1 Art
   *[other] { $count } Arten
}
weak-columns = { $count ->
    [one] 1 Spalte
   *[other] { $count } Spalten
}
weak-pairs = { $count ->
    [one] 1 Paar von Arten
   *[other] { $count } Paare von Arten
}
weak-too-many = { $kinds } und { $columns }: zu viele, um jede Art mit jeder zu vergleichen.
weak-smaller = Macht eine kleinere Tabelle für einen Ort und eine Gruppe von Arten.
weak-nothing-to-tell = { $kinds }: Da gibt es nichts zu unterscheiden.
weak-all = { $kinds }, { $columns }, { $pairs }: { $distances }.
weak-alike-count = { $count ->
    [one] 1 lässt sich nicht unterscheiden
   *[other] { $count } lassen sich nicht unterscheiden
}
weak-differ = { $count ->
    [one] 1 unterscheidet sich in { $columns }
   *[other] { $count } unterscheiden sich in { $columns }
}
weak-differ-too = { $count } in { $columns }
weak-alike = Noch nicht unterschieden
weak-fragile = Nur durch eine Spalte unterschieden
weak-next = Was als Nächstes anzusehen ist
weak-once = Die wenigsten Spalten
weak-twice = Wenn eine Antwort falsch sein darf

weak-new-difference = Diese unterscheidet nichts; sucht einen neuen Unterschied: { $pairs }.
weak-one-blank = Diese könnte eine ausgefüllte Zelle mehr unterscheiden (siehe unten): { $pairs }.
weak-several-blanks = Diese könnten nur mehrere ausgefüllte Zellen unterscheiden: { $pairs }.
weak-none-fragile = Keine. Jedes Paar unterscheidet sich in zwei Spalten oder mehr.
weak-none-fragile-but = Keine. Jedes andere Paar unterscheidet sich in zwei Spalten oder mehr.
weak-only = Nur „{ $column }“ unterscheidet { $pairs }.
weak-wrong-kind = { $count ->
    [one] Eine falsche Antwort führt dort zur falschen Art. Sucht einen zweiten Unterschied.
   *[other] Eine falsche Antwort führt dort zur falschen Art. Sucht für jedes Paar einen zweiten Unterschied.
}
weak-nothing-needed = Es fehlt nichts.
weak-no-blank = Keine leere Zelle würde helfen. Sucht einen neuen Unterschied, und schreibt ihn als Spalte dazu.
weak-more-blanks = { $count ->
    [one] Noch 1 leere Zelle könnte auch helfen (--next { $all } nennt sie).
   *[other] Noch { $count } leere Zellen könnten auch helfen (--next { $all } nennt sie).
}
weak-look = { $place }. { $column } bei { $kind }: { $could }.
weak-look-tells = könnte es unterscheiden von { $kinds }
weak-look-with-others = könnte es mit anderen leeren Zellen unterscheiden von { $kinds }
weak-look-second = könnte ein zweiter Unterschied sein zu { $kinds }

weak-no-column = Keine Spalte unterscheidet zwei von diesen Arten.
weak-all-needed = { $count ->
   *[other] Alle { $count } Spalten sind nötig, um alle Arten zu unterscheiden: Lässt man eine weg, sind zwei Arten nicht mehr zu unterscheiden.
}
weak-all-needed-but = { $count ->
   *[other] Alle { $count } Spalten sind nötig, um zu unterscheiden, was die ganze Tabelle unterscheidet: Lässt man eine weg, sind zwei Arten nicht mehr zu unterscheiden.
}
weak-set-tells = { $count ->
    [one] Die Spalte { $columns } allein unterscheidet alle Arten.
   *[other] Diese { $count } Spalten allein unterscheiden alle Arten: { $columns }.
}
weak-set-tells-but = { $count ->
    [one] Die Spalte { $columns } allein unterscheidet, was die ganze Tabelle unterscheidet.
   *[other] Diese { $count } Spalten allein unterscheiden, was die ganze Tabelle unterscheidet: { $columns }.
}
weak-sets-tell = { $count ->
    [one] Eine Spalte allein unterscheidet alle Arten, eine von diesen:
   *[other] { $count } Spalten allein unterscheiden alle Arten: { $with }:
}
weak-sets-tell-but = { $count ->
    [one] Eine Spalte allein unterscheidet, was die ganze Tabelle unterscheidet, eine von diesen:
   *[other] { $count } Spalten allein unterscheiden, was die ganze Tabelle unterscheidet: { $with }:
}
weak-any = eins davon
weak-always = { $columns }, dazu eins davon
weak-choice = - { $columns }
weak-choice-others = - und andere
weak-choice-more = - und noch { $count }
weak-proved = Bewiesen: Mit weniger geht es nicht.
weak-not-proved = Nicht bewiesen: Mindestens { $least } sind nötig, und mit { $best } geht es. Mit einem größeren --budget geht es weiter.
weak-indispensable = { $count ->
    [one] Unentbehrlich ist { $columns }.
   *[other] Unentbehrlich sind { $columns }.
}

weak-no-two = Kein Paar unterscheidet sich in zwei Spalten: Eine falsche Antwort fällt nie auf.
weak-every-pair = jedem Paar
weak-every-pair-but-alike = jedem Paar, das sich unterscheiden lässt,
weak-every-pair-but-above = jedem Paar außer denen oben
weak-all-for-two = Es braucht alle { $columns } Spalten, um bei { $which } zwei Unterschiede zu zeigen.
weak-set-shows-two = { $count ->
    [one] Die Spalte { $columns } zeigt bei { $which } zwei Unterschiede.
   *[other] Diese { $count } Spalten zeigen bei { $which } zwei Unterschiede: { $columns }.
}
weak-sets-show-two = { $count ->
    [one] Eine Spalte zeigt bei { $which } zwei Unterschiede, eine von diesen:
   *[other] { $count } Spalten zeigen bei { $which } zwei Unterschiede: { $with }:
}
weak-notice = Wer alle ansieht, merkt eine falsche Antwort.
weak-notice-but = Wer alle ansieht, merkt eine falsche Antwort, außer bei diesen Paaren.
weak-pair-from = { $one } von { $others }
weak-and-more-pairs = { $count ->
    [one] und noch 1 Paar
   *[other] und noch { $count } Paare
}
weak-noticed = Beim Lesen der Tabelle aufgefallen
