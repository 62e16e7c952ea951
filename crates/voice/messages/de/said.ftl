### Was gemacht wurde, in eigenen Worten.

said-undo = Rückgängig gemacht
said-redo = Wiederhergestellt
said-hold = An eine andere Stelle der Liste gegangen
said-back-to = Zurück zum gespeicherten Stand „{ $name }“
said-version = Diesen Stand als „{ $name }“ gespeichert
said-unname = Den Namen eines gespeicherten Standes gestrichen
said-nothing = Nichts hat sich geändert
said-kinds = { $count } Arten kamen dazu
said-measured = Auf einem Scan wurden Blätter gemessen: { $kinds }
said-and-more = { $count ->
    [one] { $first }, und noch eine Sache
   *[other] { $first }, und noch { $count } Sachen
}
said-add-nameless = { $kind } kam dazu, noch ohne Namen
said-add-kind = { $kind } kam dazu
said-name-kind = { $kind } heißt jetzt „{ $name }“
said-describe = { $what }: „{ $text }“
said-remove-kind = { $kind } wurde herausgenommen
said-merge = { $gone } ist in Wirklichkeit { $kept }
said-picture = Ein Bild von { $kind } kam dazu
said-picture-away = Ein Bild von { $kind } wurde herausgenommen
said-add-character = „{ $name }“ ist ein neues Merkmal
said-name-character = „{ $old }“ heißt jetzt „{ $name }“
said-remove-character = „{ $name }“ wurde aus der Tabelle herausgenommen
said-clear-cell = { $kind }, { $character }: geleert
said-cell = { $kind }, { $character }: „{ $text }“
said-cell-by = { $source } sagt zu { $kind }, { $character }: „{ $text }“
said-rename-state = Statt „{ $from }“ steht jetzt „{ $to }“ da
said-scene = Angaben zum Ausflug: „{ $text }“
said-start-key = Der Schlüssel „{ $name }“ wurde begonnen
said-keys = { $count } Schlüssel wurden begonnen, einer für jede Gruppe
said-rename-key = Der Schlüssel „{ $old }“ heißt jetzt „{ $name }“
said-remove-key = Der Schlüssel „{ $name }“ wurde herausgenommen
said-wish-away = Für den Schlüssel „{ $name }“ gilt dieser Wunsch nicht mehr
said-wish = Der Schlüssel „{ $name }“ ist gemacht für: { $text }
said-finish = Den Rest des Schlüssels „{ $name }“ findet Spinney aus der Tabelle
said-tried = Der Schlüssel „{ $name }“ wurde ausprobiert, und er hat funktioniert
said-not-tried = Der Schlüssel „{ $name }“ wurde doch noch nicht ausprobiert
said-unfinish = Den Rest des Schlüssels „{ $name }“ macht wieder die Gruppe
said-all-kinds = Der Schlüssel „{ $name }“ ist wieder für alle Arten
said-wish-group = Der Schlüssel „{ $name }“ gehört: { $text }
said-touch = Im Schlüssel „{ $name }“ dürfen Fragen zum Anfassen überall kommen
said-no-touch = Im Schlüssel „{ $name }“ muss niemand anfassen, was schaden kann
said-wish-never = Der Schlüssel „{ $name }“ fragt nie nach: { $text }
said-ask = „{ $name }“ fragt: { $words }
said-reword = „{ $name }“ fragt mit anderen Worten: { $words }
said-call = Bei „{ $who }“ heißt { $kind } „{ $name }“
said-call-away = Bei „{ $who }“ heißt { $kind } wie bei uns
said-take-out = „{ $name }“ fragt nicht mehr „{ $words }“
said-sort-yes = { $kind }: ja
said-sort-no = { $kind }: nein
said-sort-both = { $kind }: beides, auf beide Haufen
said-sort-back = { $kind } liegt wieder in der Mitte
