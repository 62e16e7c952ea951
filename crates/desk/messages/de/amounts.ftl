### Was etwas kostet, in Fragen je Fund.

amount-nothing = keine Frage mehr je Fund
amount-not-sure = vielleicht keine Frage mehr je Fund
amount-hardly-more = kaum eine Frage mehr je Fund
amount-hardly-fewer = kaum eine Frage weniger je Fund
amount-more = etwa { $amount } Fragen mehr je Fund
amount-at-least = mindestens { $amount } Fragen mehr je Fund
amount-fewer = etwa { $amount } Fragen weniger je Fund
