### Den Schlüssel einer Gruppe abschreiben.

copy-title = Einen Schlüssel vom Papier abschreiben
copy-why = Die Gruppe hat ihren Schlüssel auf Papier gezeichnet. Schreibt ihn Frage für Frage ab, sagt, wer ja sagt, und hört, was die Gruppe vergessen hat.
copy-no-finds = Zuerst die Funde, die die Gruppe auf dem Papier sortiert hat.
copy-begin = Abschreiben
copy-words = Was fragt das Papier diese Arten zuerst? Schreibt es so, wie die Gruppe es geschrieben hat.
copy-next = Weiter: wer sagt ja?
copy-who = Wo liegen sie auf dem Papier?
copy-filled-in = Die Tabelle hat eingetragen, was sie von diesem Wort weiß. Seht nach, ob die Gruppe dasselbe gemeint hat.
copy-means = Ja, die Gruppe meint das: { $words } Dann füllt ihr Sortieren die Tabelle.
copy-take = Übernehmen
copy-both = beides
copy-nowhere = nirgends
copy-still-open = Noch abzuschreiben
copy-no-more = Mehr sagt das Papier nicht
copy-answer = Die Antwort für die Gruppe
copy-works = Jeder Fund kommt aus eurem Schlüssel heraus. Versucht es mit einem Fund, der nicht auf dem Tisch liegt.
copy-not-yet = Noch kommt nicht jeder Fund allein aus eurem Schlüssel heraus:
copy-questions = { $count ->
    [one] Eine Frage zurück an die Gruppe:
   *[other] { $count } Fragen zurück an die Gruppe:
}
copy-lost = Bei „{ $words }“: wohin geht { $kind }?
copy-vague = „{ $words }“: bei „{ $word }“ sind sich nicht alle einig. Was können alle sehen, zählen oder messen?
copy-look-again = Seht euch { $kind } noch einmal an: „{ $words }“? Jemand anders hat es anders gesehen.
copy-together = { $kinds } sind noch beisammen. Was ist an ihnen verschieden?
copy-mend = Dorthin
copy-later = { $count ->
    [one] Eine Frage noch, an einem anderen Tag.
   *[other] { $count } Fragen noch, an einem anderen Tag.
}
copy-walks = Jeder Fund auf seinem Weg durch eure Fragen
copy-stranded = steht bei „{ $words }“ und kommt nicht weiter.
copy-elsewhere = { $kind } geht beide Wege, kommt also noch an anderer Stelle heraus.
copy-print = Als euer Plakat drucken
copy-heaps = Zu den Haufen
copy-names = Wie nennt die Gruppe sie?
copy-names-why = Schreibt die Namen vom Papier ab, wo es eigene der Gruppe sind. Sie stehen auf den Blättern der Gruppe, unsere daneben. Lasst ein Feld leer, wo es keinen gibt.
copy-name-of = { $kind }: auf dem Papier heißt es
copy-name-nobody = Hier kommt nichts heraus. Was steht dort auf dem Papier?
copy-names-keep = Ihre Namen behalten
copy-sounds-like = Auf dem Papier steht „{ $name }“, wo { $kind } liegt. Es klingt wie { $known }.
copy-own-name = So nennen sie { $kind }: „{ $name }“
copy-same-find = Dieser Fund ist { $kind }
copy-lie-apart = { $find } kann hier nicht zu { $kind } werden: bei „{ $words }“ liegen die beiden auf verschiedenen Haufen.
copy-lie-apart-remedy = Seht euch beide Karten in den Haufen an und legt die um, die falsch liegt. Dann können die beiden ein Fund werden.
copy-lie-apart-look = Diese Frage in den Haufen ansehen
copy-lies-wrong = Eine Karte liegt falsch: zu den Haufen
copy-who-is = Auf dem Papier steht „{ $name }“, wo niemand herauskommt. Welcher Fund ist das?
copy-it-is = Es ist { $kind }: dorthin legen
copy-many-names = { $count } dieser Namen klingen wie andere Funde oder stehen, wo niemand herauskommt. Auf einmal wird nach höchstens { $most } zurückgefragt.
copy-many-names-remedy = Nichts wurde behalten; was ihr geschrieben habt, steht unten. Geht zurück, behaltet zuerst einen Teil davon, dann den Rest.
copy-nobody-like-it = Kein Fund heißt so ähnlich, und jede Karte hat ein Ende. Wenn er auf dem Tisch liegt, nehmt ihn in unsere Funde auf.
copy-called-now = Inzwischen nennen sie { $kind } „{ $now }“.
copy-called-none-now = Inzwischen haben sie für { $kind } keinen eigenen Namen.
copy-called-typed = Ihr habt „{ $name }“ geschrieben. Was steht auf dem Papier?
copy-called-none-typed = Ihr habt den Namen weggenommen.
copy-no-own-name = Sie haben keinen eigenen Namen für { $kind }
copy-leave-name = So lassen, wie es dasteht
copy-card-moved = Ein anderes Fenster hat { $kind } inzwischen auf einen Haufen gelegt.
copy-card-moved-remedy = Nichts wurde geändert. Geht zurück und seht nach, wo die Karte jetzt liegt.
