### Die Arbeitsblätter auf Papier.

## Jede Seite.

sheet-page-of = Seite { $page } von { $of }
sheet-draft = ENTWURF
sheet-trying-out = zum Ausprobieren
sheet-our-group = Farbe oder Nummer der Gruppe:
sheet-notes = Notizen:
sheet-version = Version { $version }
sheet-day = { $day }. { $month } { $year }
sheet-january = Januar
sheet-february = Februar
sheet-march = März
sheet-april = April
sheet-may = Mai
sheet-june = Juni
sheet-july = Juli
sheet-august = August
sheet-september = September
sheet-october = Oktober
sheet-november = November
sheet-december = Dezember
sheet-key-to = { $count ->
    [one] Ein Schlüssel für eine Art
   *[other] Ein Schlüssel für { $count } Arten
}
sheet-you-need = ihr braucht: { $part }

## Arten und ihre Bilder.

sheet-kind-number = Art { $number } ({ $name })
sheet-kind-no-name = Art { $number } (ohne Namen)
sheet-more-kinds = eine von { $count } weiteren Arten
sheet-no-name = ohne Namen
sheet-picture-of = Bild: { $kind }
sheet-stick-leaf = hier das Blatt oder ein Rubbelbild einkleben
sheet-stick-it = hier einkleben
sheet-draw-it = hier zeichnen
sheet-picture-not-read = Diese Bilddatei ließ sich nicht öffnen.
sheet-picture-too-large = Dieses Bild ist zu groß. Macht es kleiner.
sheet-left-together = Diese Arten unterscheidet der Schlüssel nicht: { $sets }.
sheet-left-together-more = { $count ->
    [one] Diese Arten unterscheidet der Schlüssel nicht: { $sets }; und noch eine Gruppe.
   *[other] Diese Arten unterscheidet der Schlüssel nicht: { $sets }; und noch { $count } Gruppen.
}
sheet-newcomer-sentence = Stimmt der Satz nicht? Halt! Vielleicht ist es ein neuer Fund.
sheet-newcomer-look = Sieht es anders aus? Halt! Vielleicht ist es ein neuer Fund.

## Der Schlüssel, Frage für Frage.

sheet-key = Schlüssel
sheet-title-key = { $title }: Schlüssel
sheet-how-to = So benutzt ihr diesen Schlüssel
sheet-rule-start = Beginnt bei der ersten Frage. Lest sie ganz, bevor ihr antwortet.
sheet-rule-look = Seht euch mehrere an, nicht nur eins. Messt nach, ratet nicht.
sheet-rule-word = Ihr kennt ein Wort nicht? Seht hinten bei den Wörtern nach, oder fragt.
sheet-rule-word-on-wall = Ein Wort, das ihr nicht kennt? Schaut an der Wand bei „Wörter zum Ansehen“ nach oder fragt.
sheet-rule-cannot-tell = Ihr wisst es nicht? Geht beide Wege und vergleicht, was herauskommt.
sheet-rule-neither = Passt weder ja noch nein? Geht zurück zu der Frage, von der ihr kommt.
sheet-before-you-touch = Bevor ihr etwas anfasst
sheet-touch = Vor dem Anfassen: Das kann { $kinds } sein. Lest zuerst die Warnungen.
sheet-questions = Fragen
sheet-first-question = In diesem Schlüssel steht noch keine Frage. Schreibt hier die erste auf:
sheet-write-question = Schreibt hier die Frage auf:
sheet-which-fits = Was von beidem stimmt?
sheet-write-it = (hier aufschreiben)
sheet-from = (von { $numbers })
sheet-go-to = weiter bei { $number }
sheet-go-to-none = weiter bei { $number } ({ $number } gibt es nicht)
sheet-where-to = Wohin?
sheet-look-on = Seht bei { $answer } auch nach: { $looks }
sheet-shows = { $answer }: { $state }
sheet-look-yes = { $question } Das müsste ja sein.
sheet-look-no = { $question } Das müsste nein sein.
sheet-write-sentence = Woran erkennt ihr es? Schreibt einen Satz:
sheet-words-in-key = Wörter in diesem Schlüssel
sheet-what-we-noticed = Was uns aufgefallen ist

## Das Schaubild.

sheet-chart = Schaubild
sheet-title-chart = { $title }: Schaubild
sheet-key-not-large = Eine Frage dieses Schlüssels ist zu lang für Großdruck. Macht sie kürzer.
sheet-chart-not-large = Für Großdruck braucht dieser Schlüssel größeres Papier.
sheet-read-cautions = Lest zuerst die Warnungen im Schlüssel: { $kinds }.
sheet-chart-empty = In diesem Schlüssel steht noch keine Frage. Zeichnet hier die ersten.
sheet-chart-too-large = Dieser Schlüssel hat { $count } Fragen: zu viele für ein Schaubild. Nehmt den Schlüssel mit den nummerierten Fragen, oder macht für jeden Teil des Weges einen eigenen.
sheet-no-question-yet = (noch keine Frage)
sheet-write-or-stick = hier schreiben oder einkleben
sheet-write-or-draw = hier schreiben oder zeichnen
sheet-start-here = hier beginnen
sheet-no-way-here = hierher führt kein Weg
sheet-from-page = { $letter }, von Seite { $page }
sheet-goes-on = weiter auf Seite { $page }, { $letter }

## Wörter zum Ansehen.

sheet-words = Wörter
sheet-words-to-look-at = Wörter zum Ansehen
sheet-title-words = { $title }: Wörter zum Ansehen
sheet-word-cards = Wörter als Karten
sheet-title-word-cards = { $title }: Wörter als Karten
sheet-word-of-our-own = ein eigenes Wort:
sheet-not = nicht: { $caption }
sheet-not-word = nicht { $word }: { $caption }

## Alles für heute.

sheet-title-today = { $title }: Alles für heute
sheet-today = Heute
sheet-today-adult = Heute: für Erwachsene
sheet-is-draft = Dieser Schlüssel ist ein Entwurf. Erst austeilen, wenn alles behoben ist.
sheet-is-trying-out = Dieser Schlüssel ist zum Ausprobieren. Zuerst sollte jemand damit arbeiten.
sheet-copies = Was wie oft zu kopieren ist
sheet-column-sheet = Arbeitsblatt
sheet-column-what-for = Wofür
sheet-column-pages = Seiten
sheet-column-copies = Kopien
sheet-column-paper = Blätter
sheet-paper-in-all-alike = { $count ->
    [one] 1 Blatt Papier im Ganzen.
   *[other] { $count } Blatt Papier im Ganzen.
}
sheet-paper-in-all = Zusammen { $count } Blätter Papier, einseitig gedruckt; { $both }, wenn der Drucker beide Seiten bedruckt.
sheet-to-cut = Auszuschneiden: { $sheets }.
sheet-for-the-adults = für die Erwachsenen, zum Durchgehen
sheet-visit-and-answers = Ausflug und Lösungen
sheet-for-who-leads = für die Leitung, nicht austeilen
sheet-helper-and-labels = Karten und Nummern
sheet-to-check-by = zum Nachsehen
sheet-cut-before = vorher ausschneiden
sheet-one-a-group = einmal je Gruppe
sheet-for-the-wall = für die Wand: möglichst auf A3
sheet-wall-or-table = für die Wand oder den Tisch
sheet-to-write-on = einmal je Gruppe, zum Ausfüllen
sheet-counted = Gezählt für { $children } Kinder in { $groups } Gruppen, mit einer erwachsenen Person je Gruppe.
sheet-counted-assumed = Niemand hat gesagt, wie viele Kinder mitkommen. Gezählt für { $children } Kinder in { $groups } Gruppen, mit einer erwachsenen Person je Gruppe.
sheet-counted-no-groups = Niemand hat gesagt, wie viele Gruppen es sind. Gezählt für { $children } Kinder in { $groups } Gruppen zu viert, mit einer erwachsenen Person je Gruppe.
sheet-counted-no-children = Niemand hat gesagt, wie viele Kinder mitkommen. Gezählt für { $groups } Gruppen zu viert, { $children } Kinder, mit einer erwachsenen Person je Gruppe.
sheet-order = In dieser Reihenfolge
sheet-step-number = Vorher: neben jeden Fund eine Nummer legen und sie in die Lösungen schreiben.
sheet-step-cautions = Die Warnungen im Schlüssel laut vorlesen. Sagen, was niemand anfasst.
sheet-step-key = Jeder Gruppe den Schlüssel geben. Sie geht ihn mit jeder Nummer durch und schreibt in die Liste, wo sie herauskommt.
sheet-step-tick = Unten auf der Liste zusammen ankreuzen, was herauskam. Kein Kreuz? Bei welcher Frage ging die Art verloren?
sheet-step-own = Noch Zeit? Jede Gruppe macht einen eigenen Schlüssel und tauscht ihn.
sheet-cautions = Warnungen
sheet-many-cautions = { $count ->
    [one] Zu 1 Art gibt es eine Warnung. Vor dem Losgehen den Kasten „Bevor ihr etwas anfasst“ auf der ersten Seite des Schlüssels lesen.
   *[other] Zu { $count } Arten gibt es eine Warnung. Vor dem Losgehen den Kasten „Bevor ihr etwas anfasst“ auf der ersten Seite des Schlüssels lesen.
}
sheet-for-myself = Für mich
sheet-before-go = Vor dem Losgehen
sheet-rules-first = Zuerst gelten die Regeln der Schule, des Arbeitgebers und der Leute, denen das Land gehört.

## Zum Ausprobieren.

sheet-title-try-out = { $title }: zum Ausprobieren
sheet-title-set = { $title }: unsere Funde
sheet-answers = Lösungen für Erwachsene
sheet-answers-about = Der richtige Weg zu jeder Art. Hat eine Art mehrere Wege, so kommt bei ihr beides vor, oder niemand hat nachgesehen: Jeder dieser Wege ist richtig. Dieses Arbeitsblatt nicht austeilen.
sheet-column-kind = Art
sheet-column-answers = Antworten
sheet-column-number = Nummer
sheet-at-once = sofort
sheet-more-answers = { $count ->
    [one] und so weiter, noch 1 Antwort im Schlüssel
   *[other] und so weiter, noch { $count } Antworten im Schlüssel
}
sheet-not-out = { $way }: kommt nicht heraus
sheet-lost = kein Weg führt dorthin: Sie geht verloren
sheet-more-ways = { $count ->
    [one] und noch ein Weg: Er steht im Schlüssel
   *[other] und noch { $count } Wege: Sie stehen im Schlüssel
}
sheet-to-mend = Was am Schlüssel zu beheben ist
sheet-own-key = Unser eigener Schlüssel
sheet-own-key-about = Sortiert eure Arten auf zwei Haufen. Schreibt die Frage auf, die sie unterscheidet. Schreibt dann dazu, wohin jede Antwort führt: zu einer Nummer oder zu einem Namen.
sheet-from-blank = (von ____)
sheet-labels = Nummernschilder
sheet-labels-about = Schneidet die Nummern aus. Legt eine neben jeden Fund. Die Liste mit den Namen haben nur die Erwachsenen.
sheet-found-at = Fundort
sheet-tried = Den Schlüssel ausprobieren
sheet-tried-about = Geht den Schlüssel mit jedem Fund durch. Schreibt auf, wo ihr herauskommt.
sheet-tried-number = Nr.
sheet-tried-came-out = Es kam heraus bei
sheet-tried-fits = Der Satz stimmt
sheet-tried-looks = Es sieht richtig aus
sheet-tried-stopped = Nicht weiter bei Frage
sheet-tried-word = Wort, das wir nicht kannten
sheet-comes-out = Kommt alles heraus?
sheet-tick-about = Kreuzt eine Art an, wenn sie herauskommt. Was am Schluss kein Kreuz hat, ging verloren.
