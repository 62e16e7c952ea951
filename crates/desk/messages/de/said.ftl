### Was getan wurde, in eigenen Worten.

said-undo = Rückgängig gemacht
said-redo = Noch einmal getan
said-hold = An eine andere Stelle der Liste gegangen
said-back-to = Zurück zum Stand „{ $name }“
said-version = Diesen Stand „{ $name }“ genannt
said-unname = Den Namen eines Standes aufgegeben
said-nothing = Nichts hat sich geändert
said-kinds = { $count } Arten kamen dazu
said-and-more = { $count ->
    [one] { $first }, und noch eines
   *[other] { $first }, und noch { $count }
}
said-add-nameless = { $kind } kam dazu, noch ohne Namen
said-add-kind = { $kind } kam dazu
said-name-kind = { $kind } heißt jetzt „{ $name }“
said-describe = { $what }: „{ $text }“
said-remove-kind = { $kind } wurde herausgenommen
said-merge = { $gone } war in Wirklichkeit { $kept }
said-picture = Ein Bild von { $kind } kam dazu
said-picture-away = Ein Bild von { $kind } wurde weggenommen
said-add-character = Auf „{ $name }“ wird jetzt geschaut
said-name-character = „{ $old }“ heißt jetzt „{ $name }“
said-remove-character = „{ $name }“ wurde aus der Tabelle genommen
said-clear-cell = { $kind }, { $character }: geleert
said-cell = { $kind }, { $character }: „{ $text }“
said-cell-by = { $source } sagt über { $kind }, { $character }: „{ $text }“
said-rename-state = „{ $from }“ schreibt man jetzt „{ $to }“
said-scene = Der Kopf der Blätter: „{ $text }“
said-start-key = Der Schlüssel „{ $name }“ wurde begonnen
said-keys = { $count } Schlüssel wurden begonnen, einer je Gruppe
said-rename-key = Der Schlüssel „{ $old }“ heißt jetzt „{ $name }“
said-remove-key = Der Schlüssel „{ $name }“ wurde weggelegt
said-wish-away = Der Schlüssel „{ $name }“ wünscht sich das nicht mehr
said-wish = Der Schlüssel „{ $name }“ ist gemacht für: { $text }
said-finish = Der Rest des Schlüssels „{ $name }“ wird aus der Tabelle gefunden
said-tried = Der Schlüssel „{ $name }“ wurde ausprobiert, und er hat funktioniert
said-not-tried = Der Schlüssel „{ $name }“ wurde doch noch nicht ausprobiert
said-unfinish = Der Rest des Schlüssels „{ $name }“ bleibt der Gruppe überlassen
said-all-kinds = Der Schlüssel „{ $name }“ ist wieder für alle Arten
said-wish-group = Gruppe des Schlüssels „{ $name }“: { $text }
said-touch = Im Schlüssel „{ $name }“ dürfen Fragen zum Anfassen überall kommen
said-no-touch = Im Schlüssel „{ $name }“ soll niemand anfassen, was schaden kann
said-wish-never = Der Schlüssel „{ $name }“ fragt nie nach: { $text }
said-ask = „{ $name }“ fragt: { $words }
said-reword = „{ $name }“ fragt in anderen Worten: { $words }
said-call = Bei „{ $who }“ heißt { $kind } „{ $name }“
said-call-away = Bei „{ $who }“ heißt { $kind } wie bei uns
said-take-out = „{ $name }“ fragt nicht mehr „{ $words }“
said-sort-yes = { $kind } sagt ja
said-sort-no = { $kind } sagt nein
said-sort-both = { $kind } sagt beides
said-sort-back = { $kind } liegt wieder in der Mitte
