### Was wir gemacht haben.

done-empty = Noch wurde nichts gemacht. Alles, was ihr macht, steht dann hier, und alles lässt sich rückgängig machen.
done-list = Das Neueste steht oben
done-older = { $count ->
    [one] Eine Sache davor
   *[other] { $count } Sachen davor
}
done-newer = Spätere Sachen
done-undo-after = { $count ->
    [one] Die eine Sache danach rückgängig machen
   *[other] Die { $count } Sachen danach rückgängig machen
}
done-undo-all = Alles rückgängig machen
done-undone = Rückgängig gemacht
done-undone-help = Das lässt sich wiederherstellen, bis ihr etwas anderes macht.
done-bring-back = { $count ->
    [one] Das wiederherstellen
   *[other] Alle { $count } bis hierher wiederherstellen
}
done-more-undone = { $count ->
    [one] und noch eine Sache
   *[other] und noch { $count } Sachen
}
done-moved-on = Gerade wurde etwas anderes gemacht, vielleicht in einem anderen Fenster.
done-moved-on-remedy = Seht euch „Was wir gemacht haben“ noch einmal an und wählt dann neu. Nichts wurde rückgängig gemacht.
done-just-undone = Rückgängig gemacht: { $what }
done-just-redone = Wiederhergestellt: { $what }
done-would-undo = „Rückgängig“ nimmt jetzt das zurück: { $what }
done-would-redo = „Wiederholen“ bringt jetzt das zurück: { $what }
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
done-versions = Gespeicherte Stände
done-no-versions = Bevor ihr etwas ausprobiert, speichert diesen Stand unter einem Namen. Später könnt ihr ihn ansehen, vergleichen und zu ihm zurückkehren.
done-name-version = Ein Name für den Stand von jetzt, etwa „mit der 4. Klasse ausprobiert, 12. Oktober“
done-keep-version = Unter diesem Namen speichern
done-look-at = Ansehen
done-since-then = Was sich seitdem im Schlüssel geändert hat
done-same-as-now = So ist es auch jetzt.
done-go-back = Zu diesem Stand zurückkehren
done-go-back-help = Alles wird wieder so, wie es damals war. Was danach kam, bleibt in der Liste. Auch das Zurückkehren lässt sich rückgängig machen.
done-kinds = { $count ->
    [one] 1 Art
   *[other] { $count } Arten
}
done-characters = { $count ->
    [one] 1 Merkmal
   *[other] { $count } Merkmale
}
done-key = Schlüssel: { $name }
done-many-versions = Eine Sammlung hat höchstens { $count } gespeicherte Stände.
done-many-versions-remedy = Seht euch einen Stand an, den niemand mehr braucht, und streicht seinen Namen.
done-unname = Diesen Namen streichen
done-unname-why = Nur der Name verschwindet. Die Sammlung ändert sich nicht, und die Liste bleibt. „Rückgängig“ bringt den Namen nicht zurück.
done-no-such-version = Einen gespeicherten Stand mit diesem Namen gibt es nicht mehr.
done-no-such-version-remedy = Wählt einen aus der Liste.
done-between = Was sich im Schlüssel geändert hat
done-from = Von
done-to = Bis
done-now = wie es jetzt ist
done-which-key = Schlüssel
done-compare = Vergleichen
done-no-key = In keinem der beiden gibt es schon einen Schlüssel.
done-no-change = Im Schlüssel hat sich nichts geändert.
done-kept = { $count ->
    [one] Eine Frage ist wie vorher.
   *[other] { $count } Fragen sind wie vorher.
}
done-effort = Ein Fund braucht jetzt etwa { $new } Fragen. Vorher waren es etwa { $old }.
done-questions-gone = Nicht mehr gefragt
done-questions-new = Neue Fragen
done-questions-fewer = An weniger Stellen gefragt als vorher
done-questions-more = An mehr Stellen gefragt als vorher
done-begins = Er beginnt jetzt mit „{ $new }“ und nicht mehr mit „{ $old }“.
done-questions-reworded = Mit anderen Worten oder mit einer anderen Zahl gefragt
done-kinds-gone = Arten, die nicht mehr dabei sind
done-kinds-new = Arten, die dazugekommen sind
done-kinds-renamed = Arten mit anderem Namen
done-from-to = „{ $old }“ heißt jetzt „{ $new }“
