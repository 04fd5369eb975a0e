## The page "Treatment record".

treatments-page-heading = Treatment record
treatments-page-kept = Kept for { $hives ->
    [one] { NUMBER($hives) } hive.
   *[other] { NUMBER($hives) } hives.
}
treatments-page-yard = Yard: <strong>{ $yard }</strong>
treatments-page-registration = Registration: { $number }
treatments-page-keeper = Keeper: ______________________________  Signed, day: ______________________
treatments-page-none = No treatment is noted.
treatments-page-table = Treatments
treatments-page-not-told = What a row does not tell is not noted.

treatments-page-note = Note a treatment
treatments-page-hive = Hive
treatments-page-all = All hives
treatments-page-day = Day, if not today
treatments-page-substance = Substance
treatments-page-product = Product, as its label names it
treatments-page-batch = Batch
treatments-page-quantity = Quantity given, as the label or the vet told
treatments-page-supplier = Supplier
treatments-page-proof = Proof of purchase, such as an invoice's number
treatments-page-withdrawal = Withdrawal period, even if it is nil
treatments-page-duration = How long it is left in
treatments-page-keep = Keep it
treatments-page-empty = What is left empty is shown as not noted. To put a note right, open it at its hive under what was noted.

treatments-page-which-substance = Choose the substance.
treatments-page-which-hive = Choose a hive, or all of them.
