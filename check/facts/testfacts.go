package facts

// Test is the pressure test of one run, as the sheet states it.
type Test struct {
	ID           string `json:"id"` // the run
	Fluid        string `json:"fluid"`
	Gas          bool   `json:"gas"` // anything but a plain liquid: it stores what it gives back in a burst
	Air          bool   `json:"air_or_oxygen"`
	Flammable    bool   `json:"carries_flammable"` // the run does, when it is in use
	TestKPa      Int    `json:"test_kpa,omitzero" ask:"runs.*.test.pressure"`
	WorkingKPa   Int    `json:"working_kpa,omitzero" ask:"the highest pressure the source can give"` // ordinary operation, of what is in the test
	ReliefStated bool   `json:"relief_stated"`
	ReliefOver   Int    `json:"relief_over_kpa,omitzero" ask:"runs.*.test.relief: what the relief device of the test is set to"` // how far above the test pressure it opens
	DistanceSaid bool   `json:"distance_stated"`
	DistanceMM   Int    `json:"distance_mm,omitzero" ask:"runs.*.test.distance: how far people are kept from the test"`
	KeepOffMM    Int    `json:"keep_off_mm,omitzero" ask:"length and size of every hose and pipe in the test, and volume of every vessel"`                            // from the energy of the gas, ASME PCC-2
	WarmedKPa    Int    `json:"warmed_kpa,omitzero" ask:"expansion and compressibility of the test liquid, how cold and hot it gets, or a relief device on the test"` // shut in at the test pressure at its coldest, and warmed
	FreezesCK    Int    `json:"freezes_ck,omitzero" ask:"where the test liquid freezes, from its data sheet"`
	ColdestCK    Int    `json:"coldest_ck,omitzero" ask:"fluids.*.temperature.lowest of the test fluid, or site.lowest"`
	PlaceCK      Int    `json:"place_ck,omitzero" ask:"site.lowest"`
	Dried        bool   `json:"dried"`            // the sheet says that the line is emptied and dried before use
	DryService   bool   `json:"must_be_dry"`      // what the run carries does not bear a wet line
	DryBecause   string `json:"must_be_dry_for"`  // that fluid; empty for none
	Isolated     bool   `json:"relief_isolated"`  // a relief device is blanked off or taken out for the test
	IsolatedWhat string `json:"relief_set_aside"` // which; empty for none
}

// TestItem is one thing that the pressure of a test reaches: what it is rated for in use, and what the test asks of it.
type TestItem struct {
	ID       string `json:"id"`
	Run      string `json:"run"`
	Part     string `json:"part"`
	What     string `json:"what" words:"hose,body,end,seal,gauge,regulator,pump,vessel,relief"`
	Gas      bool   `json:"gas"`
	RatedKPa Int    `json:"rated_kpa,omitzero" ask:"the working pressure at that temperature, stamped or certified"` // of a relief device its set pressure, of a vessel what its plate allows in such a test
	Proof    Int    `json:"proof_ratio_permille,omitzero"`                                                           // of a hose: proof over working pressure of its class
	TestKPa  Int    `json:"test_kpa,omitzero" ask:"runs.*.test.pressure"`
	Ratio    Int    `json:"test_ratio_permille,omitzero" ask:"rated of what the test reaches, or isolated"` // test pressure over the rating, rounded up
}
