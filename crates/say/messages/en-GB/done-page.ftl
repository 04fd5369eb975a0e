## The button that says that what is first was done.

done-page-done = Done: { $what }
done-page-fondant = { $amount } of fondant given
done-page-syrup = { $amount } of 3:2 syrup given
done-page-thin-syrup = { $amount } of 1:1 syrup given
done-page-put-to = put to { $hive }
done-page-count = write the count
done-page-used = write what was used
done-page-dressed = say how it is dressed
done-page-saw = say what you saw
done-page-found = note what you found
