### Was etwas kostet, in Fragen je Fund.

amount-nothing = keine zusätzliche Frage je Fund
amount-not-sure = vielleicht keine zusätzliche Frage je Fund
amount-hardly-more = kaum mehr Fragen je Fund
amount-hardly-fewer = kaum weniger Fragen je Fund
amount-more = etwa { $amount } Fragen mehr je Fund
amount-at-least = mindestens { $amount } Fragen mehr je Fund
amount-fewer = etwa { $amount } Fragen weniger je Fund
