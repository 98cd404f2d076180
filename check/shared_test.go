package check_test

import (
	"context"
	"sync"

	"lineworthy/check"
	"lineworthy/check/units"
)

var shared = sync.OnceValues(func() (*check.Engine, error) {
	return check.New(context.Background(), check.Options{Version: "test", AsOf: units.Date{Days: 20782}}) // 2026-11-25
})
