### Die Seite, in der alles steckt: welche Sammlungen dieser Browser aufhebt, und Kopien davon.

pocket-title = Eure Sammlungen
pocket-kept-here = Alles bleibt in diesem Browser auf diesem Gerät. Nichts wird verschickt.
pocket-none-yet = Hier ist noch keine Sammlung.
pocket-list = Weiter mit
pocket-kinds = { $count ->
    [one] eine Art
   *[other] { $count } Arten
}
pocket-empty = noch nichts darin
pocket-opened = zuletzt offen am { $day }
pocket-begin = Anfangen
pocket-begin-walk = Einen erfundenen Heckengang ausprobieren
pocket-begin-walk-about = Zwölf Arten und ihr Schlüssel, um sich umzusehen. Alles darin ist erfunden.
pocket-begin-empty = Eine Sammlung anlegen
pocket-begin-empty-about = Nennt eure Funde, sagt, was ihr an ihnen seht, und macht einen Schlüssel.
pocket-begin-copy = Eine Kopie öffnen
pocket-begin-copy-about = Eine Datei, die mit „Kopie speichern“ entstanden ist, hier oder anderswo.
pocket-file = Die Datei (ihr Name endet auf .zip)
pocket-remove = Eine Sammlung aus diesem Browser entfernen
pocket-remove-which = Welche?
pocket-remove-sure = Ja: Sie ist dann endgültig weg, mit ihren Bildern. Wir haben eine Kopie oder brauchen keine.
pocket-remove-do = Entfernen
pocket-removed = „{ $title }“ ist nicht mehr in diesem Browser.
pocket-unsure = Nichts wurde entfernt.
pocket-unsure-remedy = Speichert erst eine Kopie, wenn ihr eine braucht. Setzt dann das Häkchen.
pocket-gone = Diese Sammlung ist nicht mehr in diesem Browser.
pocket-gone-remedy = Vielleicht hat ein anderes Fenster sie entfernt. Wählt eine andere, oder öffnet eine Kopie.
pocket-others = Andere Sammlungen
pocket-no-copy = Von dieser Sammlung gibt es noch keine Kopie:
pocket-old-copy = Die letzte Kopie ist vom { $day }:
pocket-save = eine speichern
pocket-may-be-cleared = Diese Sammlung liegt nur in diesem Browser, und Browser löschen manchmal, was sie aufheben. Speichert nach jedem Ausflug eine Kopie.
pocket-last-copy = Die letzte Kopie wurde am { $day } als { $file } gespeichert; sie liegt im Ordner für Downloads.
pocket-never-copied = Aus diesem Browser wurde noch keine Kopie gespeichert.
pocket-not-over = Nichts wurde geöffnet: Diese Sammlung wäre sonst weg.
pocket-not-over-remedy = Eine Kopie wird unter „Andere Sammlungen“ geöffnet: Dann ist sie neben dieser da.
pocket-memory-only = Dieser Browser hebt hier nichts auf, also bleibt alles nur im Arbeitsspeicher. Speichert eine Kopie, bevor ihr die Seite schließt.
pocket-memory-held = Ein Fenster mit einem älteren Spinney ist offen und hält fest, was dieser Browser aufhebt. Darum bleibt hier alles nur im Arbeitsspeicher. Schließt das andere Fenster und ladet diese Seite neu.
pocket-memory-newer = Ein neueres Spinney hat in diesem Browser Sammlungen aufgehoben, die dieses nicht öffnen kann. Hier bleibt alles nur im Arbeitsspeicher. Öffnet die neuere Datei.
pocket-promised = Der Browser hat zugesagt, diese Sammlung aufzuheben, bis ihr sie entfernt. Speichert trotzdem nach jedem Ausflug eine Kopie: Ein Gerät kann kaputtgehen.
pocket-not-promised = Dieser wurde gebeten, sie auf Dauer aufzuheben, und hat es nicht zugesagt.
pocket-unreadable = „{ $title }“ lässt sich nicht lesen: Etwas im Speicher dieses Browsers ist beschädigt, oder ein neueres Spinney hat es geschrieben.
pocket-unreadable-remedy = Öffnet sie mit dem neuesten Spinney, oder öffnet die letzte Kopie davon.
pocket-trial-key = Unser Schlüssel
pocket-share = Eine Kopie teilen …
