### Den Schlüssel einer Gruppe abschreiben.

copy-title = Einen Schlüssel vom Papier abschreiben
copy-why = Die Gruppe hat ihren Schlüssel auf Papier gezeichnet. Schreibt ihn Frage für Frage ab und sagt, wo es ja heißt. Dann seht ihr, was die Gruppe vergessen hat.
copy-no-finds = Zuerst die Funde, die die Gruppe auf Papier sortiert hat.
copy-begin = Abschreiben
copy-words = Was fragt das Papier bei diesen Arten zuerst? Schreibt es so, wie die Gruppe es geschrieben hat.
copy-next = Weiter: Wo heißt es ja?
copy-who = Wo liegen sie auf dem Papier?
copy-filled-in = Aus der Tabelle ist schon eingetragen, was dort zu diesem Wort steht. Seht nach, ob die Gruppe dasselbe gemeint hat.
copy-means = Ja, die Gruppe meint das: { $words } Dann kommt ihr Sortieren in die Tabelle.
copy-take = Diese Frage behalten
copy-both = beides
copy-nowhere = nirgends
copy-still-open = Noch abzuschreiben
copy-no-more = Mehr steht nicht auf dem Papier
copy-answer = Die Antwort für die Gruppe
copy-works = Jeder Fund kommt aus eurem Schlüssel heraus. Probiert ihn mit einem Fund aus, der nicht auf dem Tisch liegt.
copy-not-yet = Noch kommt nicht jeder Fund allein aus eurem Schlüssel heraus:
copy-questions = { $count ->
    [one] Eine Frage zurück an die Gruppe:
   *[other] { $count } Fragen zurück an die Gruppe:
}
copy-lost = Bei „{ $words }“: Wohin kommt { $kind }?
copy-vague = „{ $words }“: Bei „{ $word }“ sind sich nicht alle einig. Was können alle sehen, zählen oder messen?
copy-look-again = Seht euch { $kind } noch einmal an: „{ $words }“? Jemand anders hat es umgekehrt gesehen.
copy-together = { $kinds } bleiben noch zusammen. Was ist an ihnen verschieden?
copy-mend = Dort nachsehen
copy-later = { $count ->
    [one] Eine Frage bleibt für ein anderes Mal.
   *[other] { $count } Fragen bleiben für ein anderes Mal.
}
copy-walks = Der Weg von jedem Fund durch eure Fragen
copy-stranded = kommt zu „{ $words }“ und nicht weiter.
copy-elsewhere = { $kind } geht beide Wege. Darum kommt es auch noch an anderer Stelle heraus.
copy-print = Als euer Plakat drucken
copy-heaps = Zu den Haufen
copy-names = Wie nennt die Gruppe die Funde?
copy-names-why = Schreibt die Namen vom Papier ab, wo die Gruppe eigene hat. Sie stehen auf ihren Arbeitsblättern, unsere stehen daneben. Wo es keinen gibt, lasst das Feld leer.
copy-name-of = { $kind }: Auf dem Papier heißt es
copy-name-nobody = Hier kommt kein Fund heraus. Was steht auf dem Papier?
copy-names-keep = Ihre Namen speichern
copy-sounds-like = Auf dem Papier heißt { $kind } „{ $name }“. Das klingt wie { $known }.
copy-own-name = So nennt die Gruppe { $kind }: „{ $name }“
copy-same-find = Dieser Fund ist { $kind }
copy-lie-apart = { $find } kann hier nicht zu { $kind } werden: Bei „{ $words }“ liegen die beiden auf verschiedenen Haufen.
copy-lie-apart-remedy = Seht euch beide Karten bei den Haufen an und legt die falsche um. Dann kann aus beiden ein Fund werden.
copy-lie-apart-look = Diese Frage bei den Haufen ansehen
copy-lies-wrong = Eine Karte liegt auf dem falschen Haufen: nachsehen
copy-who-is = Auf dem Papier steht „{ $name }“, aber dort kommt kein Fund heraus. Welcher Fund ist das?
copy-it-is = Es ist { $kind }: dorthin legen
copy-many-names = { $count } dieser Namen klingen wie andere Funde oder stehen, wo kein Fund herauskommt. Auf einmal gehen höchstens { $most } Rückfragen.
copy-many-names-remedy = Nichts wurde gespeichert. Was ihr geschrieben habt, steht unten. Geht zurück, speichert zuerst einen Teil davon, dann den Rest.
copy-nobody-like-it = Kein Fund heißt so, und jede Karte hat schon ein Ende. Liegt er auf dem Tisch, nehmt ihn in unsere Funde auf.
copy-called-now = Jetzt nennt die Gruppe { $kind } „{ $now }“.
copy-called-none-now = Jetzt hat die Gruppe für { $kind } keinen eigenen Namen.
copy-called-typed = Ihr habt „{ $name }“ geschrieben. Was steht auf dem Papier?
copy-called-none-typed = Ihr habt den Namen gelöscht.
copy-no-own-name = Die Gruppe hat keinen eigenen Namen für { $kind }
copy-leave-name = So lassen, wie es dasteht
copy-card-moved = Jemand hat { $kind } in einem anderen Fenster auf einen Haufen gelegt.
copy-card-moved-remedy = Nichts wurde geändert. Geht zurück und seht nach, wo die Karte jetzt liegt.
