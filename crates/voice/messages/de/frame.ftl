### Was jeder Bildschirm hat.
###
### Ein Wort für eine Sache, auf jedem Bildschirm:
###
### find = Fund; newcomer = neuer Fund; kind = Art; card = Karte; heap = Haufen
### question = Frage; key = Schlüssel; comes out at = kommt heraus (bei)
### yes / no / it varies (answers) = ja / nein / beides; it varies (cells) = verschieden
### nobody has looked = noch niemand hat nachgesehen
### to separate (a question) = trennen; to tell apart = unterscheiden
### left together = bleiben zusammen; goes both ways = geht beide Wege
### mend this / worth a look / good to know = bitte beheben / einen Blick wert / gut zu wissen
### what to mend = was zu beheben ist; finished = fertig; works = funktioniert
### saved version = gespeicherter Stand; to undo / redo = rückgängig machen / wiederherstellen
### take out / remove for good = herausnehmen / endgültig löschen
### safety margin = Sicherheitsabstand; cut-off = Grenze; questions per find = Fragen je Fund
### thing to look at = Merkmal; state = Möglichkeit
### cell / row / column = Zelle / Zeile / Spalte
### printed sheet = Arbeitsblatt (nie „Blatt“ allein: das ist das Blatt am Baum)
### set of finds = Satz; title, place, season, cautions = Angaben zum Ausflug
### leaf: Blattrand, Blattspreite, Blattstiel, Blattspitze, Blattgrund, Mittelrippe,
### Seitennerven;
### leaflet = Blättchen; smooth, toothed, lobed, entire = glatt, gezähnt, gelappt, ganzrandig;
### feather / hand = gefiedert / gefingert; opposite, alternate, whorl = gegenständig,
### wechselständig, quirlständig
###
### „Ihr“ sind alle, die am Tisch stehen. Wo nur Erwachsene lesen (Dateien, Drucken, Verteilen,
### endgültig Löschen), steht es unpersönlich, nie „Sie“ und „ihr“ durcheinander.

skip = Zum Inhalt
nav = Bildschirme
nav-finds = Unsere Funde
nav-heaps = Haufen
nav-table = Tabelle
nav-key = Schlüssel
nav-words = Wörter
nav-try = Ausprobieren
nav-print = Drucken
nav-done = Was wir gemacht haben
margin = Am Rand
foot = Spinney läuft nur auf diesem Gerät: Nichts wird irgendwohin geschickt.
foot-rules = Kein Schlüssel kann sagen, ob man etwas anfassen, pflücken oder essen darf. Das entscheiden die Regeln vor Ort und Menschen, die sich auskennen.
untitled = Eine Sammlung ohne Titel
undo = Rückgängig
redo = Wiederholen
good-to-know = { $count ->
    [one] 1 Sache, die gut zu wissen ist
   *[other] { $count } Sachen, die gut zu wissen sind
}
severity-mend = bitte beheben
severity-look = einen Blick wert
severity-know = gut zu wissen
not-found = Diese Seite gibt es nicht
not-found-remedy = Vielleicht hat jemand etwas rückgängig gemacht oder in einem anderen Fenster gelöscht.
refused = Das hat nicht geklappt
go-back = Zurück
what-you-typed = Was ihr geschrieben habt
which-key = Welcher Schlüssel?
which-key-show = Zeigen
which-key-finished = fertig

form-no-head = Spinney weiß nicht, von welcher Seite dieses Formular kommt.
form-no-head-remedy = Nichts wurde geändert. Geht zurück, ladet die Seite neu und schickt es noch einmal ab.
form-other = Seit ihr diese Seite geöffnet habt, wurde etwas endgültig gelöscht oder eine andere Sammlung geöffnet.
form-other-remedy = Nichts wurde geändert. Geht zurück, ladet die Seite neu und macht es dort.
# { $name }: wie es jetzt heißt.
form-renamed = Jemand hat in einem anderen Fenster den Namen geändert. Er heißt jetzt: { $name }
form-renamed-remedy = Nichts wurde geändert. Geht zurück, seht euch die Seite noch einmal an und überlegt, ob ihr es noch meint.
