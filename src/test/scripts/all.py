"""Writes every file of independent check values."""

import energy
import money
import pert
import reproduction
import seed_bank
import seed_fit

for module in (energy, money, pert, reproduction, seed_bank, seed_fit):
    module.main()
