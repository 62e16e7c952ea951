### Was in einem Schlüssel gefunden wurde: seine Nummern, wo Arten herauskommen, und was sie nicht
### beantworten können.

## Der Schlüssel als Baum.
finding-number-twice = { $count ->
   *[other] { $count } Fragen haben die Nummer { $number }.
}
finding-number-twice-remedy = { $count ->
   *[other] Gebt jeder Frage eine eigene Nummer und berichtigt, was dorthin führt.
}
finding-number-twice-meant = Die zweite { $number } soll wohl { $meant } heißen: Eine Antwort führt zu { $meant }, und keine Frage hat diese Nummer.
finding-number-missing = { $count ->
    [one] { $from } führt zu { $to }, aber es gibt keine Frage { $to }.
   *[other] { $from } führen zu { $to }, aber es gibt keine Frage { $to }.
}
finding-number-missing-remedy = { $count ->
   *[other] Schreibt Frage { $to }, oder setzt dort einen Namen oder eine andere Nummer hin: { $from }.
}
finding-number-perhaps = Vielleicht ist { $meant } gemeint: Zu Frage { $meant } führt keine Antwort.
finding-gets-lost = { $count ->
    [one] { $kinds } geht dort verloren.
   *[other] { $kinds } gehen dort verloren.
}
finding-numbers-skip = Die Nummern laufen nicht 1, 2, 3: Frage { $number } steht da, wo { $expected } zu erwarten ist.
finding-numbers-skip-remedy = Nummeriert die Fragen von oben nach unten. So findet sich eine Klasse schneller zurecht.
finding-nothing-written = Hinter { $after } bei Frage { $question } steht nichts.
finding-nothing-written-remedy = Schreibt dort den Namen einer Art hin oder die Nummer der nächsten Frage.
finding-loop = { $from } führt zurück zu Frage { $to }. So geht man im Kreis.
finding-loop-remedy = Setzt dort einen Namen oder eine spätere Nummer hin.
finding-unreachable = Zu Frage { $question } führt keine Antwort.
finding-unreachable-named = { $count ->
    [one] Zu Frage { $question } führt keine Antwort. Darum kommt { $kinds } nie heraus.
   *[other] Zu Frage { $question } führt keine Antwort. Darum kommen { $kinds } nie heraus.
}
finding-unreachable-remedy = Lasst eine Antwort zu { $question } führen, oder nehmt die Frage heraus.
finding-back-wrong = Die Nummer in Klammern bei Frage { $question } ist { $back }, aber die Frage davor ist { $from }.
finding-back-wrong-remedy = Schreibt dort { $question } ({ $from }).
finding-ways-meet = Mehrere Wege führen zu Frage { $question }: von den Fragen { $from }.
finding-ways-meet-remedy = Das ist erlaubt: Es hilft, wenn sich jemand nicht sicher war. War es nicht so gemeint, dann prüft die Nummern.
finding-same-both-ways = Bei Frage { $question } führen beide Antworten an dieselbe Stelle.
finding-same-both-ways-remedy = Nehmt die Frage heraus, oder ändert eine ihrer Nummern.
finding-too-many-ways = Durch diesen Schlüssel gibt es zu viele Wege, um alle zu verfolgen. Nicht zu Ende verfolgt: { $kinds }.
finding-too-many-ways-remedy = Lasst weniger Wege wieder zusammenkommen, tragt fehlende Zellen ein, oder macht einen kleineren Schlüssel.

## Wo Arten herauskommen.
finding-never-comes-out = { $kind } kommt in diesem Schlüssel nie heraus.
finding-never-comes-out-reads = { $kind } kommt in diesem Schlüssel nie heraus. Wer es in der Hand hat, liest { $ends }.
finding-never-comes-out-reads-perhaps = { $kind } kommt in diesem Schlüssel nie heraus. Soweit die Fragen zu Spalten gehören, liest man { $ends }.
finding-never-comes-out-remedy = Stellt dort noch eine Frage, die { $kind } von den anderen unterscheidet.
finding-no-questions = Der Schlüssel hat keine Fragen. Darum kommt keine Art heraus.
finding-no-questions-remedy = Beginnt mit einer Frage nach „{ $about }“: Das unterscheidet einige der Arten.
finding-comes-out = kommt bei { $ends } heraus
finding-comes-out-nowhere = kommt von dort nirgends heraus
finding-wrong-place = Nach der Tabelle gilt bei Frage { $question }: { $ways }.
finding-wrong-place-way = { $kind } antwortet { $answer } und { $out }
finding-wrong-place-exchanged = Vielleicht sind ja und nein vertauscht. Wenn nicht, seht noch einmal in der Tabelle nach.
finding-wrong-place-remedy = Seht noch einmal nach: „{ $about }“ bei { $kinds }. Stimmt die Tabelle, dann schreibt { $kinds } auch hinter { $answer }, mit einer Frage davor.
finding-varies = Frage { $question } tut so, als wäre „{ $about }“ immer gleich. Aber { $ways }.
finding-varies-is = { $kind } ist nicht immer gleich: Was davon „{ $form }“ ist, { $out }
finding-varies-has = { $kind } ist nicht immer gleich: Was davon „{ $form }“ hat, { $out }
finding-varies-remedy = Lasst { $kinds } auch hinter { $answer } herauskommen, oder fragt hier nach etwas anderem.
finding-second-place = { $kind } steht ein zweites Mal hinter { $answer } bei Frage { $question }. Dorthin kommt man nur mit einem falschen „{ $misread }“ bei Frage { $wrong }.
finding-second-place-here = { $kind } steht ein zweites Mal hinter { $answer } bei Frage { $question }. Das ist dort die falsche Antwort.
finding-second-place-remedy = Das ist erlaubt: Es hilft, wenn sich jemand nicht sicher war. War es nicht so gemeint, dann streicht diesen Namen.
finding-end-unreached = Hinter { $answer } bei Frage { $question } kommt keine Art bei { $names } heraus: Keine, die dorthin gelangt, antwortet { $answer }.
finding-end-unreached-remedy = Nehmt diesen Ausgang heraus, oder lasst { $names } hier { $answer } antworten.
finding-end-unreached-only-one = Hierher gelangt überhaupt nur eine Art.
finding-end-guessed = { $names } kommt hinter { $answer } bei Frage { $question } nie heraus, obwohl der Name dort steht. Dort kann nur das herauskommen: { $kinds }. Noch niemand hat nachgesehen: { $cells }.
finding-end-guessed-remedy = Schreibt dort { $kinds } hin. Oder seht bei { $kinds } nach und tragt ein: { $cells }.
finding-parts-nothing = Alles, was zu Frage { $question } gelangt, antwortet { $answer }: { $kinds }.
finding-parts-nothing-remedy = Nehmt die Frage heraus, oder stellt eine, die diese Arten unterscheidet.
finding-named-too-often = Hinter { $answer } bei Frage { $question } ist zu viel aufgeschrieben: { $kinds }. Nach der Tabelle kommt das nie vor.
finding-named-too-often-remedy = Streicht dort { $kinds }.
finding-could-be-parted = Hinter { $answer } bei Frage { $question } stehen { $kinds } zusammen. Doch „{ $about }“ ist bei ihnen verschieden.
finding-could-be-parted-by = Hinter { $answer } bei Frage { $question } stehen { $kinds } zusammen. Doch { $about } unterscheidet sie.
finding-could-be-parted-remedy = Fragt dort nach „{ $about }“, wenn ihr sie unterscheiden wollt.

## Was Arten nicht beantworten können, oder nicht sicher.
finding-both-leads = { $count ->
    [one] Bei Frage { $question } passt { $kinds } zu beiden Aussagen über „{ $about }“.
   *[other] Bei Frage { $question } passen { $kinds } zu beiden Aussagen über „{ $about }“.
}
finding-both-leads-remedy = { $count ->
   *[other] Formuliert die Aussagen so, dass nur eine stimmen kann.
}
finding-neither-lead = { $count ->
    [one] Bei Frage { $question } passt { $kinds } zu keiner der Aussagen über „{ $about }“.
   *[other] Bei Frage { $question } passen { $kinds } zu keiner der Aussagen über „{ $about }“.
}
finding-neither-lead-remedy = { $count ->
   *[other] Formuliert die Aussagen so, dass immer eine stimmt.
}
finding-does-not-have = { $count ->
    [one] Frage { $question } { $asks }, aber { $kinds } kommt hierher und hat so etwas nicht.
   *[other] Frage { $question } { $asks }, aber { $kinds } kommen hierher und haben so etwas nicht.
}
finding-does-not-have-remedy = { $count ->
   *[other] Fragt das erst, wo { $kinds } nicht mehr hinkommt, oder fragt nach etwas anderem.
}
finding-may-not-have = Frage { $question } { $asks }. Das gibt es bei { $kinds } vielleicht nicht: Es hängt von { $governor } ab.
finding-may-not-have-remedy = Fragt vorher nach { $governor }.
finding-another-column = etwas anderem
finding-nobody-recorded = Frage { $question } { $asks }, aber bei { $kinds } hat noch niemand nachgesehen.
finding-nobody-recorded-lost = { $kind } geht verloren, wenn die Antwort { $answer } ist.
finding-nobody-recorded-remedy = Seht bei { $kinds } nach und tragt „{ $about }“ ein, oder stellt die Frage woanders.
finding-nobody-recorded-say = Seht bei { $kinds } nach und sagt ja oder nein dazu, oder stellt die Frage woanders.
finding-threshold-inside = { $count ->
   *[other] Die Zahl in Frage { $question }, { $at }, liegt mitten in dem, was gemessen wurde („{ $about }“: { $ranges }). Bei manchen heißt es ja, bei manchen nein.
}
finding-threshold-inside-remedy = { $count ->
   *[other] Nehmt eine Zahl außerhalb der Messungen von { $kinds }.
}
finding-threshold-near = Frage { $question } fragt nach { $at }. Das liegt näher als { $margin } an dem, was gemessen wurde („{ $about }“: { $ranges }). Zwei, die messen, können sich uneinig sein.
finding-threshold-near-remedy = Nehmt eine Zahl in der Mitte zwischen den Messungen, oder fragt nach etwas anderem.
finding-thin-evidence = Frage { $question } trennt { $kind } durch „{ $about }“ ab. Das wurde nur einmal angesehen.
finding-thin-evidence-remedy = Seht „{ $about }“ bei { $kind } noch öfter an, an mehr als einem Ort.

## Ein Schlüssel, der gelesen wurde, in Worten oder aus einer Datei.
finding-no-numbered-question = In diesem Text steht keine Frage mit Nummer.
finding-no-numbered-question-remedy = Beginnt jede Frage mit ihrer Nummer: 1. Ist es grün? Ja -> 2, Nein -> Rotkehlchen
finding-only-first-questions = Von diesem Schlüssel wurden nur die ersten { $read } Fragen gelesen.
finding-only-first-lines = Von diesem Schlüssel wurden nur die ersten { $read } Zeilen gelesen.
finding-several-keys = Macht mehrere Schlüssel daraus, einen für jeden Teil des Weges.
finding-line-too-long = Diese Zeile hat mehr als { $letters } Zeichen. Der Rest wurde nicht gelesen.
finding-line-too-long-remedy = Schreibt jede Frage in eine eigene Zeile, in einem Satz.
finding-line-neither = Zeile { $line } ist weder eine Frage noch eine Aussage noch eine Antwort.
finding-line-neither-remedy = Beginnt eine Frage mit ihrer Nummer und eine Antwort mit ja oder nein, oder nehmt die Zeile heraus.
finding-lead-too-many = Frage { $question } hat { $what }, in Zeile { $line }.
finding-lead-too-many-remedy = Von einer Frage führen zwei Wege weiter. Macht aus dem dritten eine neue Frage, oder berichtigt die Nummer vor der Zeile.
finding-a-third-lead = eine dritte Aussage
finding-yes-twice = zweimal „ja“
finding-no-twice = zweimal „nein“
finding-leads-nobody-knows-where = Frage { $question } führt zu „{ $written }“, und niemand weiß, wohin das ist.
finding-leads-nobody-knows-where-remedy = Schreibt hinter jede Antwort eine Nummer oder einen Namen: Ja -> 5, Nein -> Rotkehlchen
finding-name-not-sure = Frage { $question } endet bei „{ $written }“. In der Tabelle steht { $near }.
finding-name-not-sure-remedy = Schreibt es wie in der Tabelle. Wenn { $first } gemeint ist, kann auch diese Zeile in die Datei mit den Zuordnungen: name { $written } = { $first }
finding-name-unknown = Frage { $question } endet bei „{ $written }“. Das ist keine Art der Tabelle.
finding-name-unknown-remedy = Berichtigt den Namen, oder schreibt die Art in die Tabelle.
