### Was an dem gefunden wurde, was über einen Schlüssel gesagt wird, und an den Wünschen, die er
### erfüllen sollte.

finding-claim-remedy = Macht den Schlüssel aus dieser Tabelle noch einmal. Kommt das wieder, liegt der Fehler bei Spinney.
finding-effort-not-added = Der angegebene Aufwand lässt sich für diesen Schlüssel nicht nachrechnen.
finding-effort-not-added-remedy = Ordnet jede Frage einer Spalte zu. Ändert, was Arten gefragt werden, die es nicht beantworten können.
finding-cost-wrong = Was über diesen Schlüssel gesagt wird, stimmt nicht: { $wrong }.
finding-mean-questions = { $count ->
    [one] ein Fund braucht im Mittel { $is } Frage, nicht { $said }
   *[other] ein Fund braucht im Mittel { $is } Fragen, nicht { $said }
}
finding-not = { $is }, nicht { $said }
finding-bound-above-key = Angeblich kommt kein Schlüssel mit weniger Aufwand als { $bound } aus. Dieser braucht nur { $takes }.
finding-not-at-bound = Der Schlüssel soll der beste sein, und das bewiesen. Aber sein Aufwand ist { $takes }, und bewiesen ist nur { $bound }.
finding-bound-above-some = Angeblich kommt kein Schlüssel mit weniger Aufwand als { $bound } aus. Einer braucht nur { $least }.
finding-goal-wrong = Was über die Ziele dieses Schlüssels gesagt wird, stimmt nicht: { $wrong }.
finding-goal-not-counted = { $goal }: lässt sich für diesen Schlüssel nicht nachzählen
finding-goal-nothing-said = { $goal }: dazu wird nichts gesagt
finding-goal-effort = der geringste Aufwand
finding-goal-longest = der längste Weg
finding-goal-right = möglichst viele Funde beim richtigen Namen
finding-goal-even = wenige neue Wörter auf einmal
finding-goal-words = wenige verschiedene Wörter
finding-goal-rulers = so wenig Messen wie möglich
finding-reaches-effort = { $count ->
   *[other] sein Aufwand ist { $value }
}
finding-reaches-longest = { $count ->
    [one] der längste Weg hat { $value } Frage
   *[other] der längste Weg hat { $value } Fragen
}
finding-reaches-right = { $count ->
   *[other] seine Ablesefehler ergeben zusammen { $value } (−ln davon, wie oft jede Spalte richtig abgelesen wird, in Millionsteln)
}
finding-reaches-even = { $count ->
    [one] bei einer Frage kommt höchstens { $value } neues Wort vor
   *[other] bei einer Frage kommen höchstens { $value } neue Wörter vor
}
finding-reaches-words = { $count ->
    [one] der ganze Schlüssel braucht { $value } Wort
   *[other] der ganze Schlüssel braucht { $value } verschiedene Wörter
}
finding-reaches-rulers = { $count ->
   *[other] über alle Funde wird { $value }-mal ein Lineal gebraucht
}
finding-reaches-all-new-words = alle Funde zusammen treffen auf { $value } neue Wörter, jeder Fund nach seinem Gewicht
finding-reaches-apart = { $count ->
    [one] { $kinds } sind nach 1 Frage getrennt
   *[other] { $kinds } sind nach { $count } Fragen getrennt
}
finding-reaches-out = { $count ->
    [one] { $kind } ist nach 1 Frage heraus
   *[other] { $kind } ist nach { $count } Fragen heraus
}
finding-proof-fails = Der Beweis, dass dieser Schlüssel der beste ist, stimmt nicht: { $why }.
finding-proof-does-not-fit = Er spricht von Arten, Werten oder Zahlen, die nicht zur Tabelle passen
finding-proof-cannot-separate = Er sagt, dass { $kinds } zu trennen sind, aber keine Frage kann das
finding-proof-says-too-much = Er sagt zu viel davon, was es kostet, { $kinds } zu trennen; das zeigt sich bei einer Frage nach „{ $about }“
finding-proof-shows-less = Er behauptet: { $claimed }. Aber er zeigt nur, dass kein Schlüssel unter { $least } kommt
finding-better-key = Der Schlüssel soll nach euren Wünschen der beste sein, aber es gibt einen besseren: { $best }.
finding-no-key-reaches = Kein ganzer Schlüssel erreicht, was über diesen gesagt wird. Bestenfalls gilt: { $best }. Seht nach, ob an einem Ausgang Arten stehen, die sich unterscheiden lassen.

## Wünsche.
finding-wish-remedy = Macht den Schlüssel mit diesem Wunsch noch einmal, oder nehmt den Wunsch zurück.
finding-first-question = Die erste Frage
finding-question-after = Die Frage hinter { $answer } bei Frage { $question }
finding-kept-not-asked = { $place }: Gewünscht war { $wanted }. Aber dort wird nichts gefragt.
finding-kept-other = { $place }: Gewünscht war { $wanted }. Aber { $here }.
finding-kept-other-is = Frage { $question } fragt nach { $asked }
finding-kept-not-linked = sie gehört zu keiner Spalte der Tabelle
finding-not-to-be-asked = Frage { $question } fragt nach „{ $about }“. { $why }.
finding-not-to-be-asked-remedy = Fragt dort nach etwas anderem, oder nehmt den Wunsch zurück.
finding-left-out-never = Danach sollte nie gefragt werden
finding-left-out-hand = An dem, was in der Hand ist, sieht man das nicht ({ $hand })
finding-left-out-season = In dieser Jahreszeit sieht man das nicht ({ $season })
finding-sent-to-touch = Frage { $question } geht nur mit Anfassen. Dabei kann in der Hand sein: { $kinds }. Fragt dort lieber nach „{ $otherwise }“.
finding-touch-not-so = Bei Frage { $question } soll man anfassen müssen, was schaden kann. Das stimmt nicht.
finding-touch-not-said = Bei Frage { $question } muss man anfassen, was schaden kann. Das wird nicht gesagt.
finding-out-of-order = Frage { $question } fragt nach „{ $about }“. Zuerst sollte „{ $first }“ kommen, und das lässt sich dort fragen.
finding-early-apart-not-said = { $kinds } sollten früh getrennt sein, aber es wird nicht gesagt, nach wie vielen Fragen.
finding-early-out-not-said = { $kind } sollte früh heraus sein, aber es wird nicht gesagt, nach wie vielen Fragen.
finding-late-apart = { $count ->
    [one] { $kinds } sollten nach 1 Frage getrennt sein, es dauert aber { $takes }{ $to }.
   *[other] { $kinds } sollten nach { $count } Fragen getrennt sein, es dauert aber { $takes }{ $to }.
}
finding-late-out = { $count ->
    [one] { $kinds } sollte nach 1 Frage heraus sein, es dauert aber { $takes }{ $to }.
   *[other] { $kinds } sollte nach { $count } Fragen heraus sein, es dauert aber { $takes }{ $to }.
}
finding-late-up-to = { " " }(bis zu Frage { $question })
