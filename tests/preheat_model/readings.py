"""Where the page can be read in two ways: the reading that the model takes, the safer one. Each can be turned by itself."""

# "None on iron, manganese, austenitic, copper": of the metal welded on, so a hold stands under a foreign deposit too.
HOLD_UNDER_A_FOREIGN_DEPOSIT = True

# "Hardfacing, austenitic and nickel deposits are left out of it": martensitic stainless wire is none of them and counts.
MARTENSITIC_STAINLESS_DEPOSIT_COUNTS = True

# "Over its hydrogen it rises": the hottest row that stands for unknown metal too.
HOTTEST_ROW_RISES_WITH_HYDROGEN = True

# "Within method B's range" is said of the certificate: the weld metal does not lead out of it.
RANGE_IS_OF_THE_CERTIFICATE_ALONE = True

# "A514 has no maker's row": the row for consumables of its strength takes the place of nothing, so method B stays beside
# it; with a full certificate it stays beside that row on other plate too.
METHOD_B_BESIDE_THE_ROW_FOR_CONSUMABLES = True

# "The higher of the grade's own": what rules the grade itself, not method B where its table rules.
OWN_OF_STRUCTURAL_STEEL_IS_ITS_TABLE = True

# "The grade's own" past the last row of its table is worked out from the grade alone.
OWN_PAST_THE_TABLE_WITHOUT_CERTIFICATE = True

# "Neither known: the thickest row": the wall that is not known counts as thick for minimum and maximum alike.
UNKNOWN_WALL_IS_THICK = True

# A bronze wire on nodular iron: "how warm the iron is to be stands in no table".
NODULAR_IRON_UNDER_BRONZE_HAS_NO_FIGURE = True

# A STOP for softening shows no number in JSON either; a hold is never over an approved maximum.
STOP_FOR_SOFTENING_SHOWS_NO_NUMBER = True
HOLD_NEVER_OVER_AN_APPROVED_MAXIMUM = True
