### Schlüssel.

key-title = Schlüssel
key-no-finds = Zuerst die Funde: ein Schlüssel braucht Arten, die er unterscheidet.
key-none-yet = Noch gibt es keinen Schlüssel. Spinney kann aus der Tabelle einen finden, oder eure Gruppe macht ihren eigenen aus zwei Haufen.
key-no-kinds = Die Arten, für die dieser Schlüssel gemacht wurde, gibt es nicht mehr.
key-no-question = Dieser Schlüssel hat noch keine Frage. Beginnt mit zwei Haufen, oder lasst ihn aus der Tabelle finden.
key-to-heaps = Zu den Haufen
key-name = Wie heißt der Schlüssel?
key-name-example = Gang an der Hecke, Klasse 4
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
key-go-to = weiter zu Frage { $number }
key-together = bleiben zusammen
key-are-together = bleiben zusammen
key-left-together = Diese bleiben zusammen: { $kinds }.
key-together-all = { $count ->
   *[other] Noch ist nichts gefragt, darum bleiben alle { $count } Arten zusammen.
}
key-together-more = { $kinds } und { $count } weitere
key-one-more-thing = Noch ein Merkmal: { $kinds }
key-one-more-question = Noch eine Frage: { $kinds }
key-finish-needs = Um sie zu trennen, braucht Spinney:
key-together-finished = Spinney hat alles gefragt, was die Tabelle beantworten kann. Sucht einen Unterschied und schreibt ihn hier auf:
key-together-table-can = Die Tabelle kann einige davon trennen: Stellt noch eine Frage, oder lasst „Mach es für mich fertig“ sie stellen.
key-together-look = In der Tabelle trennt sie nichts. Sucht einen Unterschied und fragt hier danach:
key-nobody = hier kommt niemand heraus
key-guess-end = { $kind } nur geraten
key-guess = { $kind } ist hier nur geraten: niemand hat gesagt, was Frage { $number } von dieser Art wissen will, darum geht sie beide Wege.
key-guess-differ = { $kind } ist hier nur geraten: über das, was Frage { $number } von dieser Art wissen will, ist man sich nicht einig, darum geht sie beide Wege.
key-say-it = Für Frage { $number } sagen
key-decide-it = Für Frage { $number } entscheiden
key-change = Ändern
key-close = Fertig mit dieser Frage
key-see-heaps = Ihre Haufen ansehen
key-second-look = Ein zweiter Blick:
key-second-same = muss dieselbe Antwort geben.
key-second-opposite = muss die andere Antwort geben.
key-words = Die Frage in euren Worten
key-reword = Diese Worte nehmen
key-swap-title = Ja und Nein tauschen
key-swap-words = Die Frage, die nach den anderen fragt
key-swap = Ja und Nein tauschen
key-keep = Diese Frage behalten
key-keep-why = Sie bleibt, und die Fragen über ihr auch, was immer sich sonst ändert.
key-let-go = Loslassen
key-let-go-why = Diese Frage, und die behaltenen darunter, dürfen wieder andere sein.
key-ranges = Was gemessen wurde: { $character }
key-number = Ja heißt: so viel oder mehr
key-number-below = Ja heißt: weniger als das
key-move = Die Grenze hierher legen
key-gap = Der helle Streifen reicht { $gap } nach jeder Seite: näher an der Grenze kommen zwei mit Linealen auf zwei Antworten.
key-not-measured = nicht gemessen
key-no-number = Das ist keine Zahl.
key-no-count = Das ist keine ganze Zahl.
key-no-number-remedy = Wählt eine Zahl, die zwischen den Balken liegt, etwa in der Mitte der Lücke zwischen zweien.
key-inside = Diese Zahl liegt im Bereich von { $kinds }: manche davon würden ja sagen und manche nein.
key-inside-remedy = Nehmt eine Zahl, die zwischen den Balken liegt.
key-not-of-table = Diese Frage handelt von zwei Spalten zugleich, darum lässt sich ihre Zahl hier nicht verschieben.
key-not-of-table-remedy = Schreibt das Verhältnis als eigene Spalte in die Tabelle, dann fragt danach.
key-instead = { $count ->
    [0] Hier etwas anderes fragen
    [one] Hier etwas anderes fragen: 1 Frage
   *[other] Hier etwas anderes fragen: { $count } Fragen
}
key-instead-none = Die Tabelle hat keine andere Frage, die hier taugt.
key-instead-more = { $count ->
    [one] Eine weitere kostet mehr als diese.
   *[other] { $count } weitere kosten mehr als diese.
}
key-size = { $count ->
    [0] Noch keine Frage
    [one] 1 Frage für { $kinds } Arten
   *[other] { $count } Fragen für { $kinds } Arten
}
key-may-change = Der Rest dieses Schlüssels wird aus der Tabelle gefunden: ändert sich die Tabelle, können sich seine Fragen ändern.
key-keep-all = Jede Frage so behalten
key-moved = Die Fragen dieses Schlüssels haben sich inzwischen geändert, vielleicht durch ein anderes Fenster.
key-moved-remedy = Nichts wurde behalten. Geht zurück, seht euch die Fragen an, wie sie jetzt sind, und behaltet diese.
key-all-kept = Jede Frage dieses Schlüssels bleibt, solange die Tabelle sie zulässt. Neue können hinzukommen, wo Arten zusammenbleiben.
key-mean-one = etwa eine Frage je Fund
key-mean = etwa { $mean } Fragen je Fund
key-longest = { $count ->
    [one] nie mehr als 1 Frage
   *[other] nie mehr als { $count } Fragen
}
key-as-drawn = Wie eure Gruppe ihn gemacht hat.
key-as-drawn-works = Dieser Schlüssel funktioniert: Jede Art kommt bei ihrem Namen heraus. So hat ihn eure Gruppe gemacht.
key-finish = Mach es für mich fertig
key-unfinish = So lassen, wie wir ihn gezeichnet haben
key-best = Kein Schlüssel braucht weniger Fragen; eine zweite Meinung stimmt zu.
key-best-spared = Niemand fasst an, was schaden kann. Kein solcher Schlüssel braucht weniger Fragen, und eine zweite Meinung stimmt zu.
key-best-touch-waits = Das Anfassen wartet, bis nichts anderes mehr trennt. Kein solcher Schlüssel braucht weniger Fragen, und eine zweite Meinung stimmt zu.
key-best-wished = Kein Schlüssel, der euren Wünschen folgt, braucht weniger Fragen; eine zweite Meinung stimmt zu.
key-best-alone = Kein Schlüssel braucht weniger Fragen. Für eine zweite Meinung dazu ist die Tabelle zu groß.
key-best-so-far-alone = Kein Schlüssel braucht weniger Fragen. Eine zweite Meinung wurde noch nicht gefragt.
key-ask-second = Eine zweite Meinung einholen
key-contradicted = Die Suche sagt, dass kein Schlüssel weniger Fragen braucht, aber die zweite Meinung stimmt nicht zu: seht nach, was zu verbessern ist.
key-not-sure = Der beste bisher, noch nicht sicher: kein Schlüssel zu dieser Tabelle kommt mit weniger als { $least } Fragen je Fund aus.
key-too-fine = Der beste, der gefunden wurde. Die Anteile in dieser Tabelle sind zu fein, um sicher zu sein.
key-look-on = Weiter suchen
key-wishes-cost = Was ihr behalten und gewünscht habt:
key-touch-costs = Niemand soll anfassen, was schaden kann, solange etwas anderes trennt. Das braucht
key-touch-saves = Anfassen ist erlaubt. Das braucht
key-touching = { $count ->
    [one] Frage { $questions } geht nur durch Anfassen, obwohl noch eine Art mit Warnung möglich ist. Nichts anderes trennt dort.
   *[other] Die Fragen { $questions } gehen nur durch Anfassen, obwohl noch eine Art mit Warnung möglich ist. Nichts anderes trennt dort.
}
key-touching-or-kept = { $count ->
    [one] Frage { $questions } geht nur durch Anfassen, obwohl noch eine Art mit Warnung möglich ist. Nichts anderes trennt dort, oder ihr habt sie behalten.
   *[other] Die Fragen { $questions } gehen nur durch Anfassen, obwohl noch eine Art mit Warnung möglich ist. Nichts anderes trennt dort, oder ihr habt sie behalten.
}
key-more = Mehr
key-more-effort = Eine schwere Frage zählt für zwei oder drei, und eine, die ein Lineal oder eine Lupe braucht, doppelt so viel.
key-more-heaps = { $count ->
    [one] Ein Haufen wurde zerlegt, um das herauszufinden.
   *[other] { $count } Haufen wurden zerlegt, um das herauszufinden.
}
key-looking = Sucht nach einem besseren Schlüssel
key-looking-more = Ihr könnt inzwischen anderes tun. Eine Änderung an der Tabelle oder am Schlüssel beendet die Suche.
key-looking-best = Bisher { $best } Fragen je Fund. Kein Schlüssel kommt mit weniger als { $least } aus.
key-looked = { $count ->
    [one] Ein Haufen zerlegt.
   *[other] { $count } Haufen zerlegt.
}
key-stop = Anhalten, und den besten bisher nehmen
key-mend = Was zu verbessern ist
key-nothing-to-mend = Nichts.
key-mend-at = Bei Frage
key-unanswered = { $count ->
    [one] Niemand hat von { $kind } gesagt, was diese Frage wissen will:
   *[other] Niemand hat von { $kind } gesagt, was diese { $count } Fragen wissen wollen:
}
key-not-agreed = { $count ->
    [one] Über das, was diese Frage von { $kind } wissen will, ist man sich nicht einig:
   *[other] Über das, was diese { $count } Fragen von { $kind } wissen wollen, ist man sich nicht einig:
}
key-not-agreed-remedy = Seht euch { $kind } zusammen an und entscheidet. Bis dahin geht die Art beide Wege.
key-unanswered-lost = Auf manchen Wegen geht { $kind } verloren.
key-unanswered-remedy = Seht euch { $kind } an und sagt ja oder nein. Bis dahin geht die Art beide Wege.
key-unanswered-more = { $count ->
    [one] Dasselbe gilt für noch eine Art
   *[other] Dasselbe gilt für noch { $count } Arten
}
key-not-asked = „{ $words }“ wurde behalten, kann dort aber nicht gefragt werden.
key-take-out = Loslassen
key-why-blocked = { $kind } hat nicht, oder vielleicht nicht, wonach sie fragt, oder sein Bereich liegt auf beiden Seiten der Zahl.
key-why-alike = Alle Arten, die dorthin kommen, antworten gleich.
key-why-no-state = Die Tabelle hat dieses Wort nicht mehr.
key-why-after = Die Frage darüber kann nicht gefragt werden, darum kommt niemand hierher.
key-why-left-out = Das gehört zu dem, was dieser Schlüssel nie fragt, oder ist an dem, was man in der Hand hat, nicht zu sehen.
key-why-never = Nichts in der Tabelle tut das.
key-for-what = Wofür dieser Schlüssel ist
key-hand = Was hat man in der Hand?
key-any-hand = irgendetwas
key-season = Wann?
key-any-season = irgendwann
key-touch = Anfassen ist erlaubt
key-touch-more = Sonst soll niemand einen Fund anfassen, solange noch eine Art mit Warnung möglich ist und etwas anderes trennt.
key-never = Nie fragen nach
key-describe = Das nehmen
key-remove = Diesen Schlüssel weglegen
key-remove-more = „Was wir getan haben“ bringt ihn wieder.
key-compare = Zwei Schlüssel nebeneinander
key-compare-too-few = Um sie nebeneinanderzulegen, braucht es zwei Schlüssel.
key-compare-button = Nebeneinanderlegen
key-one = Der eine Schlüssel
key-other = Der andere
key-open = Öffnen
key-row-works = Funktioniert er?
key-row-together = Bleiben zusammen
key-none-together = keine
key-works = ja: Jede Art kommt allein heraus
key-works-together = jede Art kommt heraus, aber nicht jede allein
key-works-in-part = soweit er geprüft werden konnte
key-works-not-yet = noch nicht: seht nach, was zu verbessern ist
key-works-not-begun = noch ist nichts gefragt
key-row-questions = Fragen insgesamt
key-row-mean = Fragen je Fund, etwa
key-row-longest = Auf dem längsten Weg
key-row-mend = Zu verbessern
key-cannot-say = lässt sich noch nicht sagen
tried-not-yet = Das ist ein Exemplar zum Ausprobieren: einige Fragen sind von euch, oder nicht alles ließ sich prüfen. Lasst jemanden damit arbeiten, der die Antworten nicht kennt.
tried-mend-first = Das ist ein Exemplar zum Ausprobieren: erst ist noch etwas zu verbessern.
tried-it = Wir haben ihn ausprobiert, und er hat funktioniert
tried-already = Ihr habt diesen Schlüssel so, wie er jetzt ist, ausprobiert, und er hat funktioniert.
tried-not-after-all = Wir haben ihn doch noch nicht ausprobiert
tried-moved = Dieser Schlüssel hat sich geändert, seit die Seite gezeigt wurde.
tried-moved-remedy = Seht ihn noch einmal an, und sagt es von dem Schlüssel, wie er jetzt ist.
key-others = { $count ->
    [0] Noch einen Schlüssel beginnen
   *[other] Zwei Schlüssel nebeneinander legen oder noch einen beginnen
}
key-compare-with = Neben „{ $name }“
key-own-words = Das sind eure eigenen Worte. Darum bleiben sie, wenn sich die Worte der Tabelle ändern. Aus der Tabelle hieße es: „{ $question }“
key-own-words-take = Die Worte der Tabelle nehmen
