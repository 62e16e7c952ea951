### Was wir getan haben.

done-empty = Noch wurde nichts getan. Alles, was ihr tut, wird hier aufgehoben, und alles lässt sich rückgängig machen.
done-list = Das Letzte steht oben
done-older = { $count ->
    [one] Eines davor
   *[other] { $count } davor
}
done-newer = Spätere
done-undo-after = { $count ->
    [one] Das eine danach rückgängig machen
   *[other] Die { $count } danach rückgängig machen
}
done-undo-all = Alles rückgängig machen
done-undone = Rückgängig gemacht
done-undone-help = Das kann wiederkommen, bis etwas anderes getan wird.
done-bring-back = { $count ->
    [one] Das wiederbringen
   *[other] Alle { $count } bis hierher wiederbringen
}
done-more-undone = { $count ->
    [one] und noch eines
   *[other] und noch { $count }
}
done-moved-on = Inzwischen wurde etwas anderes getan, vielleicht in einem anderen Fenster.
done-moved-on-remedy = Seht euch „Was wir getan haben“ an, wie es jetzt ist, und wählt dann noch einmal. Nichts wurde rückgängig gemacht.
done-just-undone = Zurückgenommen: { $what }
done-just-redone = Wieder getan: { $what }
done-would-undo = „Rückgängig“ nähme jetzt dies zurück: { $what }
done-would-redo = „Noch einmal“ brächte jetzt dies wieder: { $what }
done-just-now = gerade eben
done-minutes-ago = { $count ->
    [one] vor einer Minute
   *[other] vor { $count } Minuten
}
done-hours-ago = { $count ->
    [one] vor einer Stunde
   *[other] vor { $count } Stunden
}
done-days-ago = { $count ->
    [one] vor einem Tag
   *[other] vor { $count } Tagen
}
done-versions = Benannte Stände
done-no-versions = Gebt dem Stand einen Namen, bevor ihr etwas ausprobiert. Ihr könnt ihn später ansehen, vergleichen und zu ihm zurückkehren.
done-name-version = Ein Name dafür, wie es jetzt ist, etwa „mit der 4. Klasse erprobt, 12. Oktober“
done-keep-version = Diesen Namen behalten
done-look-at = Ansehen
done-since-then = Was sich seither im Schlüssel geändert hat
done-same-as-now = So ist es auch jetzt.
done-go-back = Dorthin zurückkehren
done-go-back-help = Alles wird, wie es damals war. Was seither getan wurde, bleibt in der Liste, und auch das Zurückkehren lässt sich rückgängig machen.
done-kinds = { $count ->
    [one] 1 Art
   *[other] { $count } Arten
}
done-characters = { $count ->
    [one] 1 Merkmal
   *[other] { $count } Merkmale
}
done-key = Schlüssel: { $name }
done-many-versions = Eine Sammlung hat höchstens { $count } benannte Stände.
done-many-versions-remedy = Seht euch einen an, den niemand mehr braucht, und gebt seinen Namen auf.
done-unname = Diesen Namen aufgeben
done-unname-why = Nur der Name geht: nichts, was getan wurde, ändert sich, und die Liste bleibt. „Rückgängig“ bringt den Namen nicht wieder.
done-no-such-version = Einen Stand mit diesem Namen gibt es nicht mehr.
done-no-such-version-remedy = Wählt einen aus der Liste.
done-between = Was sich im Schlüssel geändert hat
done-from = Von
done-to = Bis
done-now = wie es jetzt ist
done-which-key = Schlüssel
done-compare = Vergleichen
done-no-key = Keiner der beiden hat schon einen Schlüssel.
done-no-change = Im Schlüssel hat sich nichts geändert.
done-kept = { $count ->
    [one] Eine Frage ist wie zuvor.
   *[other] { $count } Fragen sind wie zuvor.
}
done-effort = Ein Fund braucht jetzt etwa { $new } Fragen; vorher etwa { $old }.
done-questions-gone = Wird nicht mehr gefragt
done-questions-new = Neue Fragen
done-questions-fewer = An weniger Stellen gefragt als zuvor
done-questions-more = An mehr Stellen gefragt als zuvor
done-begins = Er beginnt jetzt mit „{ $new }“ und nicht mehr mit „{ $old }“.
done-questions-reworded = In anderen Worten oder mit einer anderen Zahl gefragt
done-kinds-gone = Arten, die gegangen sind
done-kinds-new = Arten, die gekommen sind
done-kinds-renamed = Arten mit anderem Namen
done-from-to = „{ $old }“ ist jetzt „{ $new }“
