### Was etwas kostet, in Fragen je Blatt.

amount-nothing = keine Frage mehr je Blatt
amount-not-sure = vielleicht keine Frage mehr je Blatt
amount-hardly-more = kaum eine Frage mehr je Blatt
amount-hardly-fewer = kaum eine Frage weniger je Blatt
amount-more = etwa { $amount } Fragen mehr je Blatt
amount-at-least = mindestens { $amount } Fragen mehr je Blatt
amount-fewer = etwa { $amount } Fragen weniger je Blatt
