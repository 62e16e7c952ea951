### What something costs, in questions per find.

amount-nothing = no more questions per find
amount-not-sure = perhaps no more questions per find
amount-hardly-more = hardly any more questions per find
amount-hardly-fewer = hardly any fewer questions per find
amount-more = about { $amount } more questions per find
amount-at-least = at least { $amount } more questions per find
amount-fewer = about { $amount } fewer questions per find
