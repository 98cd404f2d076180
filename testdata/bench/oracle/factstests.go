package oracle

// Test mirrors the facts of that name.
type Test struct {
	ID           string `json:"id"`
	Fluid        string `json:"fluid"`
	Gas          bool   `json:"gas"`
	Air          bool   `json:"air_or_oxygen"`
	Flammable    bool   `json:"carries_flammable"`
	TestKPa      *int64 `json:"test_kpa"`
	WorkingKPa   *int64 `json:"working_kpa"`
	ReliefStated bool   `json:"relief_stated"`
	ReliefOver   *int64 `json:"relief_over_kpa"`
	DistanceSaid bool   `json:"distance_stated"`
	DistanceMM   *int64 `json:"distance_mm"`
	KeepOffMM    *int64 `json:"keep_off_mm"`
	WarmedKPa    *int64 `json:"warmed_kpa"`
	FreezesCK    *int64 `json:"freezes_ck"`
	ColdestCK    *int64 `json:"coldest_ck"`
	PlaceCK      *int64 `json:"place_ck"`
	Dried        bool   `json:"dried"`
	DryService   bool   `json:"must_be_dry"`
	DryBecause   string `json:"must_be_dry_for"`
	Isolated     bool   `json:"relief_isolated"`
	IsolatedWhat string `json:"relief_set_aside"`
}

// TestItem mirrors the facts of that name.
type TestItem struct {
	ID       string `json:"id"`
	Run      string `json:"run"`
	Part     string `json:"part"`
	What     string `json:"what"`
	Gas      bool   `json:"gas"`
	RatedKPa *int64 `json:"rated_kpa"`
	Proof    *int64 `json:"proof_ratio_permille"`
	TestKPa  *int64 `json:"test_kpa"`
	Ratio    *int64 `json:"test_ratio_permille"`
}

// Steam mirrors the facts of that name.
type Steam struct {
	ID          string `json:"id"`
	Run         string `json:"run"`
	Cleaning    bool   `json:"cleaning"`
	KPa         *int64 `json:"pressure_kpa"`
	SaturatedCK *int64 `json:"saturated_ck"`
	StatedCK    *int64 `json:"stated_ck"`
}
