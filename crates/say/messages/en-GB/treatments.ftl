## The keeper's record of treatments, as an inspector asks for it.

treatments-kept = The European Union asks for such a record, kept for five years (Regulation (EU) 2019/6, article 108); many other countries ask much the same (the United Kingdom, from memory: five years). Here nothing is ever deleted: a note that is changed or withdrawn stays in the records beside its newer version, and the notes of a hive that has left the yard stay too. What stands only in a yard file lasts as long as that file: note it here to have it kept.
treatments-not-noted = not noted

treatments-day = Day
treatments-hive = Hive
treatments-substance = Substance
treatments-product = Product
treatments-batch = Batch
treatments-quantity = Quantity
treatments-supplier = Supplier
treatments-proof = Proof
treatments-withdrawal = Withdrawal
treatments-duration = Duration

treatments-formic = formic acid
treatments-thymol = thymol
treatments-oxalic = oxalic acid
treatments-strips = contact strips
treatments-other = something else
