## Set-ups side by side.

# The name of the set-up that the hive has.
setup-as-it-is = as it is
