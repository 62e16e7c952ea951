### Die Seite fürs Handy.

## Jede Ansicht.

phone-a-key = Ein Schlüssel
phone-draft = ENTWURF: Behebt zuerst, was an diesem Schlüssel nicht stimmt
phone-version = Version { $version }
phone-steps = Schritte
phone-again = Zurück zum Anfang

## Die erste Ansicht.

phone-need = Ihr braucht
phone-how-several = Seht euch mehrere davon an, nicht nur eins.
phone-how-measure = Lest die Frage. Messt nach, ratet nicht.
phone-how-cannot-tell = Ihr wisst es nicht? Geht beide Wege und vergleicht, was herauskommt.
phone-how-sentence = Lest am Ende den Satz. Er muss stimmen.
phone-no-question = In diesem Schlüssel steht noch keine Frage.
phone-left-out = { $count ->
    [one] 1 Bild fehlt auf dieser Seite, damit sie klein genug für ein Handy bleibt. Auf den gedruckten Arbeitsblättern ist es.
   *[other] { $count } Bilder fehlen auf dieser Seite, damit sie klein genug für ein Handy bleibt. Auf den gedruckten Arbeitsblättern sind sie.
}

## Eine Frage.

phone-yes = Ja
phone-no = Nein
phone-cannot-tell = Ich weiß es nicht
phone-no-words = Diese Frage hat noch niemand aufgeschrieben.
phone-go-to = weiter bei Frage { $number }
phone-back-to = Zurück zu
phone-question = Frage { $number }
phone-or = oder
phone-what-is = Was heißt: { $words }?

## Ein Ende.

phone-should-be = Das müsste sein:
phone-take-care = Vorsicht!
phone-not-apart = Dieser Schlüssel kann sie nicht unterscheiden.
phone-read-each = Lest, was zu jeder Art dasteht.
phone-no-sentence = Zu dieser Art hat noch niemand einen Satz aufgeschrieben. Fragt jemanden, der sie kennt.
phone-strange-name = Dieser Name steht nicht in der Tabelle: Fragt die, die den Schlüssel gemacht haben.
phone-stops = Hier hört der Schlüssel auf
phone-missing-question = Frage { $number }, die es nicht gibt
phone-no-such-question = Der Schlüssel schickt euch zu Frage { $number }, aber die gibt es nicht. Sagt es denen, die ihn gemacht haben.
phone-nothing-here = hier steht nichts
phone-nobody-wrote = Niemand hat aufgeschrieben, wie es nach dieser Antwort weitergeht. Sagt es denen, die den Schlüssel gemacht haben.

## Was unterwegs gesagt wird.

phone-still-be = Das kann es noch sein
phone-suppose = Nehmen wir an: { $question } { $answer }.
phone-back-here = Hierher zurück
phone-fork = Wir gehen beide Wege.
phone-fork-suppose = Ihr wusstet es nicht. Wir gehen beide Wege. Nehmen wir zuerst einmal an:
phone-one-of = Es kann eine von diesen { $count } Arten sein
phone-two = zwei
phone-three = drei
phone-four = vier
phone-which-sentence = Lest die Sätze. Welcher stimmt?
phone-which-one = Vergleicht sie. Welche stimmt?
phone-no-sentence-fits = Stimmt kein Satz? Halt! Vielleicht ist es ein neuer Fund.
phone-none-fits = Stimmt keine davon? Halt! Vielleicht ist es ein neuer Fund.
phone-it-fits = Es stimmt: { $name }
phone-circle = Ihr seid im Kreis gegangen
phone-circle-why = Der Schlüssel führt zurück zu einer Frage, die ihr schon beantwortet habt. Sagt es denen, die ihn gemacht haben.
phone-only-one = Nur eine ist noch übrig.
phone-one-of-many = Es kann noch eine von { $count } sein.
phone-at-end = Ihr seid an einem Ende des Schlüssels.
phone-both-done = Ihr seid beide Wege bis zum Ende gegangen.
phone-read-aloud = Vorlesen
phone-stop-reading = Vorlesen beenden
