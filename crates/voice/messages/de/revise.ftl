### Der Schlüssel vom letzten Mal für die Tabelle von jetzt: was blieb, was sich änderte.

revise-changed = Was sich geändert hat
revise-price = Was weniger oder mehr Änderungen kosten würden
revise-in-short = { $count ->
    [0] Der Schlüssel vom letzten Mal funktioniert noch und bleibt, wie er ist: etwa { $questions } je Fund, höchstens { $longest }; { $against }.
    [one] Der Schlüssel vom letzten Mal, mit einer geänderten Frage: etwa { $questions } je Fund, höchstens { $longest }; { $against }.
   *[other] Der Schlüssel vom letzten Mal, mit { $count } geänderten Fragen: etwa { $questions } je Fund, höchstens { $longest }; { $against }.
}
revise-best = kein Schlüssel zu dieser Tabelle braucht weniger
revise-best-so-far = soweit gesucht wurde, braucht kein Schlüssel zu dieser Tabelle weniger
revise-saves = der beste Schlüssel zu dieser Tabelle spart { $questions } je Fund
revise-saves-so-far = soweit gesucht wurde, spart der beste Schlüssel zu dieser Tabelle { $questions } je Fund
revise-proved = Bewiesen: Jeder Schlüssel mit weniger Änderungen braucht über { $questions } je Fund mehr als der beste.
revise-stopped-budget = { $count ->
    [one] Nicht bewiesen: Die Suche hörte nach einem Haufen auf; vielleicht reichen weniger Änderungen. Mit einem größeren --budget geht es weiter.
   *[other] Nicht bewiesen: Die Suche hörte nach { $count } Haufen auf; vielleicht reichen weniger Änderungen. Mit einem größeren --budget geht es weiter.
}
revise-stopped-memory = { $count ->
    [one] Nicht bewiesen: Nach einem Haufen passte nichts mehr in den Speicher; vielleicht reichen weniger Änderungen.
   *[other] Nicht bewiesen: Nach { $count } Haufen passte nichts mehr in den Speicher; vielleicht reichen weniger Änderungen.
}
revise-stopped-overflow = Nicht bewiesen: Die Zahlen in dieser Tabelle brauchen mehr Stellen, als hier genau gerechnet werden kann. Schreibt rundere Zahlen, oder füllt unbekannte Zellen aus.
revise-new-kinds = Neu in der Tabelle: { $kinds }.
revise-gone-kinds = Nicht mehr in der Tabelle, oder anders geschrieben: { $kinds }.
revise-kept = So geblieben: { $questions }.
revise-asked-otherwise = Anders gefragt: { $number }. { $after } Vorher: { $before }
revise-added = Neu: { $number }. { $question }
revise-struck = Gestrichen: { $number } im alten Schlüssel. { $question }
revise-was = { $now } (vorher { $was })
revise-columns-questions = Fragen
revise-columns-changed = geändert
revise-columns-effort = Fragen je Fund (eine schwere Frage zählt für zwei oder drei)
revise-from-none-to = 0 bis { $most }
revise-not-possible = nicht möglich: Kein Schlüssel, der diese Arten unterscheidet, ist dem alten so ähnlich
revise-this-key = dieser Schlüssel
revise-as-good = so gut wie der beste Schlüssel
revise-best-found = der beste, der gefunden wurde
revise-not-proved = (nicht bewiesen: vielleicht reicht weniger)
revise-allow-more = Für weniger Änderungen muss mehr erlaubt sein: --loss { $loss } gibt den Schlüssel mit { $changes }.
