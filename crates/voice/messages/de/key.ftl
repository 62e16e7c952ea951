### Schlüssel.

key-title = Schlüssel
key-no-finds = Zuerst die Funde: Ein Schlüssel braucht Arten, die er unterscheidet.
key-none-yet = Es gibt noch keinen Schlüssel. Spinney kann aus der Tabelle einen finden. Oder eure Gruppe macht mit zwei Haufen ihren eigenen.
key-no-kinds = Die Arten, für die dieser Schlüssel gemacht wurde, gibt es nicht mehr.
key-no-question = Dieser Schlüssel hat noch keine Frage. Beginnt mit zwei Haufen, oder lasst ihn aus der Tabelle finden.
key-to-heaps = Zu den Haufen
key-name = Wie heißt der Schlüssel?
key-name-example = Heckenspaziergang, Klasse 4
key-group = Wem gehört er? (Farbe oder Nummer einer Gruppe, nie der Name eines Kindes)
key-group-example = Gruppe Blau
key-start = Noch einen Schlüssel beginnen
key-start-finished = Einen Schlüssel aus der Tabelle finden
key-start-empty = Mit zwei Haufen beginnen
key-looks = Wie man ihn ansieht
key-as-list = Als Fragen
key-as-tree = Als Baum
key-question = Frage
key-kept = behalten
key-go-to = weiter bei Frage { $number }
key-together = bleiben zusammen
key-are-together = bleiben zusammen
key-left-together = Diese bleiben zusammen: { $kinds }.
key-together-all = { $count ->
   *[other] Noch wird nichts gefragt. Darum bleiben alle { $count } Arten zusammen.
}
key-together-more = { $kinds } und { $count } weitere
key-one-more-thing = Noch ein Merkmal für { $kinds }
key-one-more-question = Noch eine Frage für { $kinds }
key-finish-needs = Um sie zu unterscheiden, braucht Spinney:
key-together-finished = Spinney hat alles gefragt, was die Tabelle beantworten kann. Sucht einen Unterschied und schreibt ihn hier auf:
key-together-table-can = Die Tabelle kann einige davon trennen. Stellt noch eine Frage, oder lasst „Mach es für mich fertig“ sie stellen.
key-together-look = In der Tabelle unterscheiden sie sich nicht. Sucht einen Unterschied und fragt hier danach:
key-nobody = hier kommt kein Fund heraus
key-guess-end = { $kind } nur geraten
key-guess = { $kind } ist hier nur geraten: Noch niemand hat für Frage { $number } nachgesehen. Darum geht diese Art beide Wege.
key-guess-differ = { $kind } ist hier nur geraten: Bei Frage { $number } sind sich nicht alle einig. Darum geht diese Art beide Wege.
key-say-it = Für Frage { $number } nachsehen
key-decide-it = Für Frage { $number } entscheiden
key-change = Ändern
key-close = Fertig mit dieser Frage
key-see-heaps = Ihre Haufen ansehen
key-second-look = Ein zweiter Blick:
key-second-same = gibt dieselbe Antwort.
key-second-opposite = gibt die andere Antwort.
key-words = Die Frage in euren Worten
key-reword = Diese Worte nehmen
key-swap-title = Die Frage umdrehen
key-swap-words = Die umgedrehte Frage: Ja heißt dann der andere Haufen
key-swap = Die Frage umdrehen
key-keep = Diese Frage behalten
key-keep-why = Sie bleibt, und die Fragen über ihr auch, egal was sich sonst ändert.
key-let-go = Nicht mehr behalten
key-let-go-why = Statt dieser Frage, und statt der behaltenen darunter, können dann andere kommen.
key-ranges = Was gemessen wurde: { $character }
key-number = Ja heißt: so viel oder mehr
key-number-below = Ja heißt: weniger als das
key-move = Die Grenze hierher schieben
key-gap = Im schattierten Streifen ({ $gap } nach jeder Seite) können zwei, die messen, sich uneinig sein.
key-not-measured = nicht gemessen
key-no-number = Das ist keine Zahl.
key-no-count = Das ist keine ganze Zahl.
key-no-number-remedy = Wählt eine Zahl zwischen den Balken, am besten in der Mitte zwischen zweien.
key-inside = Diese Zahl liegt mitten im Bereich von { $kinds }: Bei manchen hieße es ja, bei manchen nein.
key-inside-remedy = Nehmt eine Zahl zwischen den Balken.
key-not-of-table = Diese Frage fragt nach zwei Spalten auf einmal. Darum lässt sich ihre Zahl hier nicht verschieben.
key-not-of-table-remedy = Schreibt das Verhältnis als eigene Spalte in die Tabelle. Dann fragt danach.
key-instead = { $count ->
    [0] Hier etwas anderes fragen
    [one] Hier etwas anderes fragen: 1 Frage
   *[other] Hier etwas anderes fragen: { $count } Fragen
}
key-instead-none = In der Tabelle gibt es keine andere Frage, die hier passt.
key-instead-more = { $count ->
    [one] Noch eine Frage kostet mehr als diese.
   *[other] Noch { $count } Fragen kosten mehr als diese.
}
key-size = { $count ->
    [0] Noch keine Frage
    [one] 1 Frage für { $kinds } Arten
   *[other] { $count } Fragen für { $kinds } Arten
}
key-may-change = Den Rest dieses Schlüssels findet Spinney aus der Tabelle. Ändert sich die Tabelle, können sich auch die Fragen ändern.
key-keep-all = Alle Fragen so behalten, wie sie sind
key-moved = Die Fragen dieses Schlüssels haben sich geändert, vielleicht in einem anderen Fenster.
key-moved-remedy = Nichts wurde gespeichert. Geht zurück, seht euch die Fragen noch einmal an und behaltet dann diese.
key-way-moved = Jemand hat in einem anderen Fenster eine Frage über dieser geändert.
key-way-moved-remedy = Geht zurück, seht euch den Schlüssel noch einmal an und macht es dort neu.
key-all-kept = Alle Fragen dieses Schlüssels bleiben, solange die Tabelle sie zulässt. Neue können dazukommen, wo Arten zusammenbleiben.
key-mean-one = etwa eine Frage je Fund
key-mean = etwa { $mean } Fragen je Fund
key-longest = { $count ->
    [one] nie mehr als 1 Frage
   *[other] nie mehr als { $count } Fragen
}
key-as-drawn = So hat ihn eure Gruppe gemacht.
key-as-drawn-works = Dieser Schlüssel funktioniert: Jede Art kommt bei ihrem eigenen Namen heraus. So hat ihn eure Gruppe gemacht.
key-finish = Mach es für mich fertig
key-unfinish = So lassen, wie wir ihn gezeichnet haben
key-best = Kein Schlüssel braucht weniger Fragen. Eine zweite Prüfung bestätigt das.
key-best-spared = Niemand muss anfassen, was schaden kann. Kein solcher Schlüssel braucht weniger Fragen. Eine zweite Prüfung bestätigt das.
key-best-touch-waits = Angefasst wird erst, wenn nichts anderes mehr trennt. Kein solcher Schlüssel braucht weniger Fragen. Eine zweite Prüfung bestätigt das.
key-best-wished = Kein Schlüssel, der eure Wünsche erfüllt, braucht weniger Fragen. Eine zweite Prüfung bestätigt das.
key-best-alone = Kein Schlüssel braucht weniger Fragen. Für eine zweite Prüfung ist die Tabelle zu groß.
key-best-so-far-alone = Kein Schlüssel braucht weniger Fragen. Eine zweite Prüfung gab es noch nicht.
key-ask-second = Ein zweites Mal prüfen
key-contradicted = Die Suche sagt: Kein Schlüssel braucht weniger Fragen. Die zweite Prüfung bestätigt das nicht. Seht nach, was zu beheben ist.
key-not-sure = Der beste bisher, aber noch nicht sicher: Mit weniger als { $least } Fragen je Fund kommt kein Schlüssel für diese Tabelle aus.
key-too-fine = Der beste, der gefunden wurde. Die Zahlen in dieser Tabelle haben zu viele Stellen, um sicher zu sein.
key-look-on = Weiter suchen
key-wishes-cost = Was ihr behalten und gewünscht habt:
key-touch-costs = Niemand muss anfassen, was schaden kann, solange etwas anderes trennt. Das macht
key-touch-saves = Anfassen ist erlaubt. Das macht
key-touching = { $count ->
    [one] Frage { $questions } geht nur mit Anfassen, obwohl eine Art mit Warnung noch möglich ist. Sonst trennt dort nichts.
   *[other] Die Fragen { $questions } gehen nur mit Anfassen, obwohl eine Art mit Warnung noch möglich ist. Sonst trennt dort nichts.
}
key-touching-or-kept = { $count ->
    [one] Frage { $questions } geht nur mit Anfassen, obwohl eine Art mit Warnung noch möglich ist. Sonst trennt dort nichts, oder ihr habt sie behalten.
   *[other] Die Fragen { $questions } gehen nur mit Anfassen, obwohl eine Art mit Warnung noch möglich ist. Sonst trennt dort nichts, oder ihr habt sie behalten.
}
key-more = Mehr
key-more-effort = Eine schwere Frage zählt für zwei oder drei. Mit Lineal oder Lupe zählt sie doppelt.
key-more-heaps = { $count ->
    [one] Dafür wurde ein Haufen zerlegt.
   *[other] Dafür wurden { $count } Haufen zerlegt.
}
key-looking = Sucht nach einem besseren Schlüssel
key-looking-more = Solange gesucht wird, könnt ihr etwas anderes machen. Ändert ihr die Tabelle oder den Schlüssel, endet die Suche.
key-looking-best = Bisher { $best } Fragen je Fund. Mit weniger als { $least } kommt kein Schlüssel für diese Tabelle aus.
key-looked = { $count ->
    [one] Ein Haufen zerlegt.
   *[other] { $count } Haufen zerlegt.
}
key-stop = Aufhören und den besten bisher nehmen
key-mend = Was zu beheben ist
key-nothing-to-mend = Nichts.
key-mend-at = Bei Frage
key-unanswered = { $count ->
    [one] Bei { $kind } hat für diese Frage noch niemand nachgesehen:
   *[other] Bei { $kind } hat für diese { $count } Fragen noch niemand nachgesehen:
}
key-not-agreed = { $count ->
    [one] Bei { $kind } sind sich in dieser Frage nicht alle einig:
   *[other] Bei { $kind } sind sich in diesen { $count } Fragen nicht alle einig:
}
key-not-agreed-remedy = Seht euch { $kind } zusammen an und entscheidet. Bis dahin geht diese Art beide Wege.
key-unanswered-lost = Auf manchen Wegen geht { $kind } verloren.
key-unanswered-remedy = Seht euch { $kind } an und sagt ja oder nein. Bis dahin geht diese Art beide Wege.
key-unanswered-more = { $count ->
    [one] Dasselbe gilt für noch eine Art
   *[other] Dasselbe gilt für noch { $count } Arten
}
key-not-asked = „{ $words }“ wurde behalten, lässt sich dort aber nicht fragen.
key-why-blocked = { $kind } hat so etwas nicht oder vielleicht nicht, oder die Maße reichen über beide Seiten der Grenze.
key-why-alike = Alle Arten, die dorthin kommen, geben dieselbe Antwort.
key-why-no-state = In der Tabelle gibt es dieses Wort nicht mehr.
key-why-after = Die Frage darüber lässt sich nicht fragen. Darum kommt kein Fund hierher.
key-why-left-out = Danach fragt dieser Schlüssel nie, oder man sieht es nicht an dem, was man in der Hand hat.
key-why-never = Nichts in der Tabelle kann das.
key-for-what = Wofür dieser Schlüssel ist
key-hand = Was hat man in der Hand?
key-any-hand = irgendetwas
key-season = Wann?
key-any-season = jederzeit
key-touch = Anfassen ist erlaubt
key-touch-more = Sonst muss niemand einen Fund anfassen, solange eine Art mit Warnung noch möglich ist und etwas anderes trennt.
key-never = Nie fragen nach
key-describe = Übernehmen
key-remove = Diesen Schlüssel herausnehmen
key-remove-more = „Was wir gemacht haben“ bringt ihn zurück.
key-compare = Zwei Schlüssel nebeneinander
key-compare-too-few = Zum Vergleichen braucht es zwei Schlüssel.
key-compare-button = Nebeneinanderlegen
key-one = Der eine Schlüssel
key-other = Der andere
key-open = Öffnen
key-row-works = Funktioniert er?
key-row-together = Bleiben zusammen
key-none-together = keine
key-works = ja: Jede Art kommt allein heraus
key-works-together = jede Art kommt heraus, aber nicht jede allein
key-works-in-part = soweit es sich prüfen ließ
key-works-not-yet = noch nicht: Seht nach, was zu beheben ist
key-works-not-begun = noch wird nichts gefragt
key-row-questions = Fragen insgesamt
key-row-mean = Fragen je Fund, etwa
key-row-longest = Auf dem längsten Weg
key-row-mend = Zu beheben
key-cannot-say = lässt sich noch nicht sagen
tried-not-yet = Das ist zum Ausprobieren: Einige Fragen habt ihr selbst gestellt, oder nicht alles ließ sich prüfen. Lasst jemanden damit arbeiten, der die Lösungen nicht kennt.
tried-mend-first = Das ist zum Ausprobieren: Zuerst ist noch etwas zu beheben.
tried-it = Wir haben ihn ausprobiert, und er hat funktioniert
tried-already = Ihr habt diesen Schlüssel so, wie er jetzt ist, ausprobiert, und er hat funktioniert.
tried-not-after-all = Wir haben ihn doch noch nicht ausprobiert
tried-moved = Dieser Schlüssel hat sich geändert, seit ihr die Seite geöffnet habt.
tried-moved-remedy = Seht euch den Schlüssel noch einmal an und sagt dann, ob er so funktioniert hat.
key-others = { $count ->
    [0] Noch einen Schlüssel beginnen
   *[other] Zwei Schlüssel nebeneinanderlegen oder noch einen beginnen
}
key-compare-with = Neben „{ $name }“
key-own-words = Das sind eure eigenen Worte. Darum bleiben sie, wenn sich die Worte der Tabelle ändern. Aus der Tabelle hieße es: „{ $question }“
key-own-words-take = Die Worte der Tabelle nehmen
