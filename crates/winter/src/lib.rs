//! The coupled winter model: hive, air, water, cluster, stores, bees.
