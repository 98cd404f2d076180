# METADATA
# title: The vessel is filled beyond the degree of filling for transport
# description: |
#   The transport rules leave room for the liquid to expand up to 50 °C. A vessel that arrives fuller
#   than that may be liquid full on a hot day, and any pad pressed on it makes it worse.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [is_source, holds_liquid, "regime=ADR"]
#   needs: [vessels.filled_permille, vessels.fill_limit_permille]
#   absent: [vessels.kind]
#   message: >-
#     {part} is {have_permille} full; for this liquid the degree of filling for transport is
#     {need_permille}
#   action: "Do not press a pad on it; take the surplus off under a vent first, and tell the filler."
#   basis:
#     - document: ADR
#       edition: ""
#       clause: "4.2.1.9.2"
#       standing: published
#     - document: ADR
#       edition: ""
#       clause: "4.3.2.2.1"
#       standing: recalled
package rules.expansion.filled_above_transport_degree

report contains {
	"subject": v.id,
	"part": v.id,
	"have_permille": v.filled_permille,
	"need_permille": v.fill_limit_permille,
} if {
	"ADR" in input.line.regimes
	some v in input.vessels
	v.is_source
	v.holds_liquid
	not _fixed(v)
	v.filled_permille > v.fill_limit_permille
}

# What stands on its foundation is not carried. A vessel of unknown kind counts as one that is.
_fixed(v) if v.kind in {"tank", "pressure-vessel", "process-vessel"}
