# METADATA
# title: A marine hose has an end the law does not accept
# description: |
#   The US rule for oil and hazardous material between vessel and shore takes full threads, flanges to
#   the US classes, and quick couplings to one standard. Lever couplings are not among them.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point", "regime=33 CFR 154.500"]
#   needs: [joints.family_a, joints.family_b]
#   message: "{part} has an end of a kind ({end}) that the marine rule does not accept"
#   action: "Fit a threaded, flanged or accepted quick-coupled end."
#   basis:
#     - document: 33 CFR 154.500
#       edition: "CFR 2015 annual edition"
#       clause: "(d)"
#       standing: published
package rules.connection.marine_hose_end_not_accepted

report contains {"subject": j.id, "part": h.id, "end": end[1]} if {
	"33 CFR 154.500" in input.line.regimes
	some j in input.joints
	not j.open_point
	some end in {[j.a, j.family_a], [j.b, j.family_b]}
	some h in input.hoses
	h.id == end[0]
	not end[1] in _accepted
}

# Full threads, flanges to ASME B16.5, and couplings to ASTM F1122.
_accepted := {
	"astm-f1122",
	"flange-asme-b16-5",
	"thread-g",
	"thread-npsm",
	"thread-npt",
	"thread-nptf",
	"thread-r",
}
