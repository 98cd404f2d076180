package sequence_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/sequence"
)

// TestRead: what is wrong is said in the words of the file, and nothing that was written is passed over.
func TestRead(t *testing.T) {
	for text, want := range map[string]string{
		"":                                                       "the file is empty",
		"line: A\nsteps: []\n":                                   "there are no steps",
		"line: A\nsteps:\n":                                      "there are no steps",
		"line: A\nsteps: {do: open}\n":                           "line 2: steps is a list",
		"- {do: open}\n":                                         "line 1: a sequence is written with the keys line and steps",
		"line: [A]\n":                                            "line 1: line: write one word",
		"line: A\nfoo: 1\n":                                      `line 2: a sequence has no "foo": use line and steps`,
		"line: A\nsteps:\n  -\n":                                 "line 3: a step is written like",
		"line: A\nsteps:\n  - open V1\n":                         "line 3: a step is written like",
		"line: A\nsteps:\n  - {do: [open]}\n":                    "line 3: do: write one word",
		"line: A\nsteps:\n  - {part: V1}\n":                      `line 3: a step has no "part"`,
		"line: A\nsteps:\n  - {slowly: bit}\n":                   `line 3: slowly: "bit": write yes or no`,
		"line: A\nsteps:\n  - {item: V1, item: V2}\n":            "line 3: item is written twice",
		"line: A\nsteps:\n  - {do: open}\n---\nline: B\n":        "more behind ---",
		"line: A\nsteps:\n  - {do: open}\nsteps:\n  - {do: x}\n": "line 4: steps is written twice",
		"line: A\nsteps:\n  - {do: open\n":                       "did not find expected",
	} {
		_, err := sequence.Read([]byte(text))
		require.ErrorContains(t, err, want, text)
		require.NotContains(t, err.Error(), "unmarshal", text)
	}
	s, err := sequence.Read([]byte("line: A\nsteps:\n  - &x {do: open, item: V1, slowly: yes, pressure: 3, run: }\n  - *x\n"))
	require.NoError(t, err)
	require.Equal(t, "A", s.Line)
	require.Len(t, s.Steps, 2)
	require.True(t, s.Steps[1].Slowly)
	require.Equal(t, "3", s.Steps[0].Pressure)
	require.Empty(t, s.Steps[0].Run)
}

func FuzzRead(f *testing.F) {
	f.Add([]byte("line: A\nsteps:\n  - {do: open, item: V1}\n"))
	f.Add([]byte("a: &a [*a]"))
	f.Fuzz(func(t *testing.T, text []byte) {
		if s, err := sequence.Read(text); err == nil {
			require.NotEmpty(t, s.Steps)
		}
	})
}
