### What something costs, in questions per find.

amount-nothing = no question more per find
amount-not-sure = perhaps no question more per find
amount-hardly-more = hardly a question more per find
amount-hardly-fewer = hardly a question fewer per find
amount-more = about { $amount } questions more per find
amount-at-least = at least { $amount } questions more per find
amount-fewer = about { $amount } questions fewer per find
