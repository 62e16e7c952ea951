### Eine Datei, die beschädigt ist.

damaged-title = Ein Teil dieser Sammlung ist beschädigt
damaged-file = Ein Teil von { $file } ist nicht mehr so, wie Spinney ihn geschrieben hat. Die Datei selbst wurde nicht geändert.
damaged-step = Schritt { $step } von { $steps } ist nicht lesbar.
damaged-step-when = Schritt { $step } von { $steps } ist nicht lesbar. Er stammt vom { $when }.
damaged-when = { $day } um { $time } Uhr
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
damaged-nothing = Davon lässt sich nichts retten. Bitte eine ältere Kopie öffnen.
damaged-end = Am Ende können Schritte fehlen. Die Datei sagt nicht, wie viele es waren.
damaged-save = Retten, was lesbar ist
damaged-save-help = Spinney schreibt es in eine neue Datei, { $new }, und öffnet sie. Bitte { $file } behalten, bis alles durchgesehen ist.
damaged-all = { $count ->
    [one] Einen Schritt retten
   *[other] { $count } Schritte retten
}
damaged-all-help = Alles, was lesbar ist, vor und nach dem Schaden. Bitte durchsehen: Spätere Schritte können sich auf etwas beziehen, das jetzt fehlt.
damaged-before = { $count ->
    [one] Einen Schritt retten
   *[other] { $count } Schritte retten
}
damaged-before-help = Nur was vor dem Schaden kam, genau so, wie es damals war.
