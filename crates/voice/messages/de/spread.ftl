### Wie weit die Blätter einer Art streuen, und wie weit man einer Grenze zwischen zwei Arten trauen kann.

spread-all = { $count ->
    [one] 1 Zeile, { $kinds }.
   *[other] { $count } Zeilen, { $kinds }.
}
spread-nothing = Nichts davon wurde gemessen oder gezählt, also gibt es zu Zahlen nichts zu sagen.
spread-how-far = Vom kleinsten zum größten
spread-of = { $name }: { $span }, Mittelwert { $mean }, Standardabweichung { $deviation } ({ $measured })
spread-of-one = { $name }: { $value } ({ $measured })
spread-measured = { $count } gemessen
spread-measured-on = { $count ->
    [one] { $measured } an 1 Pflanze
   *[other] { $measured } an { $count } Pflanzen
}
spread-outliers = { $count ->
    [one] Weit weg von den anderen: { $finds }. Messt diesen Fund nach, oder seht nach, ob er von einer anderen Art ist. Er zählt mit, bis ihr ihn ändert.
   *[other] Weit weg von den anderen: { $finds }. Messt diese Funde nach, oder seht nach, ob sie von einer anderen Art sind. Sie zählen mit, bis ihr sie ändert.
}
spread-outlier = { $value } ({ $find })
spread-row = Zeile { $row }
spread-row-called = Zeile { $row }, Nummer { $find }
spread-row-in = Zeile { $row }, Nummer { $find } in { $picture }
spread-cuts = Wo die Grenze zwischen zwei Arten liegt
spread-one-kind = Es gibt nur eine Art.
spread-not-both = Keine zwei Arten wurden in derselben Spalte gemessen.
spread-too-many-kinds = Das sind zu viele Arten, um je zwei zu vergleichen. Macht eine kleinere Tabelle für einen Ort.
spread-cut = { $low } oder { $high }? „{ $about }“: { $at } oder mehr ist { $high }, weniger ist { $low }.
spread-none-wrong = Alle { $finds } liegen auf der richtigen Seite. Der Sicherheitsabstand ist { $margin }.
spread-wrong = Auf der falschen Seite: { $low-wrong } von { $low-finds } ({ $low }), { $high-wrong } von { $high-finds } ({ $high }). Es gibt keinen Sicherheitsabstand.
spread-left-out = Lässt man jeden Fund einmal weg, kommen { $share } von 100 falsch heraus.
spread-none-left-out = Lässt man jeden Fund einmal weg, kommt jeder richtig heraus. Bei { $finds } heißt das wenig: Von weiteren könnten immer noch bis zu { $still } von 100 falsch herauskommen.
spread-normal = Sind beide Arten normalverteilt, liegen von 100 weiteren etwa { $share } auf der falschen Seite.
spread-enough = Es wurde genug gemessen, um dem zu trauen.
spread-measure = Messt noch { $more }, bevor ihr dem traut.
spread-more-of = { $count } von { $kind }
spread-never = Traut dem nicht, so viele ihr auch messt: Auch wenn weitere Funde so ausfallen wie diese, liegen mehr als 5 von 100 auf der falschen Seite ({ $kinds }).
spread-too-many = Um dem zu trauen, müsste man mehr als 300 von { $kinds } messen. Sucht einen anderen Unterschied.
spread-more-pairs = { $count ->
    [one] 1 weiteres Paar ist genauso gut oder besser getrennt (--all-pairs nennt es).
   *[other] { $count } weitere Paare sind genauso gut oder besser getrennt (--all-pairs nennt sie).
}
