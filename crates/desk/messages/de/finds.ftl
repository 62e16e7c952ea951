### Unsere Funde.

caution = Vorsicht!
finds-empty = Was habt ihr gefunden? Schreibt die Namen unten auf, einen je Zeile, oder legt Bilder hinein. Ein Fund ohne Namen heißt nach einem Buchstaben, bis jemand ihn kennt.
finds-not-named = noch ohne Namen
finds-add = Funde hinzufügen
finds-names = Namen, einer je Zeile
finds-pictures = Oder Bilder, eines je Fund
finds-add-button = Hinzufügen
finds-too-many = Eine Sammlung hat höchstens { $count } Arten.
finds-too-many-remedy = Beginnt eine zweite Sammlung, etwa eine je Lebensraum.
picture-not-read = { $file } konnte nicht als Bild gelesen werden.
picture-too-large = { $file } hat mehr Bildpunkte, als hier gelesen werden.
picture-remedy = Nehmt eine JPEG- oder PNG-Datei mit höchstens 40 Millionen Bildpunkten. Wo und wann sie aufgenommen wurde, wird nicht aufgehoben.
