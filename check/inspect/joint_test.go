package inspect_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"lineworthy/check/inspect"
	"lineworthy/check/report"
)

const butanone = "../../testdata/lines/butanone-day-tank/line.yaml"

func item(t *testing.T, l *inspect.List, id string) *inspect.Item {
	t.Helper()
	i := slices.IndexFunc(l.Items, func(i *inspect.Item) bool { return i.ID == id })
	require.GreaterOrEqual(t, i, 0, id)
	return l.Items[i]
}

// TestJointSaysWhatItJoins: a wrong end is seen before it is forced on.
func TestJointSaysWhatItJoins(t *testing.T) {
	l, _ := listOf(t, engine(t), butanone)
	require.Equal(t, "cylinder outlet, DIN 477 no. 10, male to female", item(t, l, "source.source to PR1.inlet").Name)
	require.Equal(t, "PN flange, EN 1092-1 DN 50 PN 16 B1, both ends", item(t, l, "H2.outlet to T2.inlet").Name)
	require.Contains(t, l.Form(), `"H2.outlet to T2.inlet" # joint PN flange, EN 1092-1`)
	none, _ := listOf(t, engine(t), "../../testdata/sequences/pump/line.yaml")
	require.Equal(t, "ends not on the sheet", item(t, none, "V1.outlet to P1.inlet").Name)
}

// TestRejectToldOnce: what holds for every item of a sort is told once, and bolts are for flanges alone.
func TestRejectToldOnce(t *testing.T) {
	l, _ := listOf(t, engine(t), butanone)
	thread, flange := item(t, l, "PR1.outlet to T1.inlet"), item(t, l, "H2.outlet to T2.inlet")
	require.Empty(t, thread.Own)
	require.Len(t, flange.Own, 1)
	require.Contains(t, flange.Own[0].Text, "bolts loose")
	require.Equal(t, 1, strings.Count(l.Text(report.Options{}), "any joint: seal missing"))
	for _, i := range l.Items {
		require.NotEmpty(t, i.Reject, i.ID)
		for _, r := range i.Own {
			require.Contains(t, i.Reject, r)
		}
	}
	own := ""
	for _, r := range item(t, l, "H2").Own {
		own += r.Text + "\n"
	}
	require.Contains(t, own, "more than 1 Mohm from end to end")
	require.Contains(t, own, "falls due on 2027-02-10") // dates stay with their hose
}

// TestVagueDamage: a word that can mean that all is well, or that something is wrong, is asked again and not guessed.
func TestVagueDamage(t *testing.T) {
	for _, word := range []string{"ok", "OK", "no", "yes", "-", "sound"} {
		l, _ := listOf(t, engine(t), butanone)
		_, err := l.Merge([]byte(fill(l, map[string]string{"V1/damage": word})))
		require.ErrorContains(t, err, "write none, or what is wrong", word)
	}
	require.Empty(t, inspected(t, butanone, map[string]string{"V1/damage": "None"}).Rejected)
	require.Len(t, inspected(t, butanone, map[string]string{"V1/damage": "handle bent"}).Rejected, 1)
}

// TestSealWords: a seal by another of its names is the same seal; a word that is none is refused at its line.
func TestSealWords(t *testing.T) {
	require.Empty(t, inspected(t, butanone, map[string]string{"PR1.outlet to T1.inlet/seal": "O-ring"}).Unjudged)
	l, _ := listOf(t, engine(t), butanone)
	_, err := l.Merge([]byte(fill(l, map[string]string{"PR1.outlet to T1.inlet/seal": "PTFE"})))
	require.ErrorContains(t, err, "seal of PR1.outlet to T1.inlet: write the kind of the seal, or none")
	require.ErrorContains(t, err, "nearest: ptfe-envelope")
}

// TestKeptApart: the leak test stays out of what cannot bear it.
func TestKeptApart(t *testing.T) {
	for path, want := range map[string][]string{
		"butanone-day-tank": {"returnable, rated 10 bar(g), stands under the test too", "shut V1 towards returnable; shut V2 towards day-tank"},
		"caustic-ibc":       {"blank the end at neutralising-tank off: no valve of the sheet keeps the test out of it"},
		"sunflower-tanker":  {"shut the outlet valve of tanker, which the sheet does not show; blank the end at store off"},
	} {
		l, _ := listOf(t, engine(t), "../../testdata/lines/"+path+"/line.yaml")
		all := ""
		for _, x := range l.Tests {
			all += x.How + "\n"
		}
		for _, w := range want {
			require.Contains(t, all, w, path)
		}
	}
}
