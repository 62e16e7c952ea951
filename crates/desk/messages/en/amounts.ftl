### What something costs, in questions a leaf.

amount-nothing = no question more a leaf
amount-not-sure = perhaps no question more a leaf
amount-hardly-more = hardly a question more a leaf
amount-hardly-fewer = hardly a question fewer a leaf
amount-more = about { $amount } questions more a leaf
amount-at-least = at least { $amount } questions more a leaf
amount-fewer = about { $amount } questions fewer a leaf
