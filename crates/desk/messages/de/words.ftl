### Wörter.

words-no-key = Die Wörter kommen aus einem Schlüssel: die seine Fragen sagen, und keine anderen. Beginnt zuerst einen Schlüssel.
words-none = Dieser Schlüssel sagt kein Wort, das man erklären müsste.
words-count = { $count ->
    [one] Ein Wort, dem Kinder in diesem Schlüssel begegnen und das sie vielleicht nicht kennen.
   *[other] { $count } Wörter, denen Kinder in diesem Schlüssel begegnen und die sie vielleicht nicht kennen.
}
words-look-alike = Nicht zu verwechseln mit
words-question = Frage { $number }: { $text }
words-confirming = { $kind }: { $text }
words-unexplained = Wörter, die man kennen muss, ohne einfache Worte
words-unexplained-remedy = Dafür hat noch niemand einfache Worte. Sagt es in der Frage selbst, oder zeigt die Sache.
words-draw-smooth = glatter Rand
words-draw-unlobed = ungelappt
words-draw-oval = eiförmig
words-draw-toothed = gezähnt
words-draw-double = doppelt gezähnt
words-draw-spiny = stachelig
words-draw-lobed = gelappt
words-draw-heart = herzförmig
words-draw-needle = Nadel
words-draw-feather = Blättchen wie eine Feder
words-draw-hand = Blättchen wie eine Hand
words-draw-opposite = gegenständig
words-draw-alternate = wechselständig
words-draw-whorl = Quirl
words-draw-no-stalk = ohne Stiel
words-draw-blade = Spreite
words-draw-stalk = Blattstiel
words-draw-edge = Rand
words-draw-midrib = Mittelrippe
words-draw-veins = Seitenadern
words-draw-tip = Spitze
words-draw-base = Grund
