### Eine Datei, die beschädigt ist.

damaged-title = Ein Teil dieser Sammlung ist beschädigt
damaged-file = Ein Teil von { $file } ist nicht mehr so, wie Spinney ihn geschrieben hat. Die Datei selbst wurde nicht geändert.
damaged-step = Schritt { $step } von { $steps } ist nicht lesbar.
damaged-step-when = Schritt { $step } von { $steps } ist nicht lesbar. Er ist vom { $when }.
damaged-no-step = Alle Schritte sind lesbar. Etwas anderes in der Datei wurde verändert.
damaged-more = { $count ->
    [one] Noch ein Schritt ist nicht lesbar.
   *[other] Noch { $count } Schritte sind nicht lesbar.
}
damaged-pictures = { $count ->
    [one] Ein Bild ist verloren.
   *[other] { $count } Bilder sind verloren.
}
damaged-pictures-unknown = Auch Bilder können fehlen.
damaged-nothing = Davon lässt sich nichts retten. Öffnet eine ältere Kopie.
damaged-end = Am Ende können Schritte fehlen. Die Datei sagt nicht mehr, wie viele es waren.
damaged-save = Rettet, was lesbar ist
damaged-save-help = Spinney schreibt es in eine neue Datei, { $new }, und öffnet diese. Hebt { $file } auf, bis ihr alles durchgesehen habt.
damaged-all = { $count ->
    [one] Einen Schritt retten
   *[other] { $count } Schritte retten
}
damaged-all-help = Alles, was lesbar ist, vor und nach dem Schaden. Seht es durch: was danach kam, kann auf dem beruhen, was fehlt.
damaged-before = { $count ->
    [one] Einen Schritt retten
   *[other] { $count } Schritte retten
}
damaged-before-help = Nur was vor dem Schaden kam, genau so, wie es damals war.
