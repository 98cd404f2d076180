# METADATA
# title: The liquid fills the closed vessel before it is at its hottest
# description: |
#   A liquid that warms needs more room. Once the gas space is gone the pressure climbs by several bar
#   with each degree, and the shell or its relief device has to give.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [closed, holds_liquid, is_source]
#   needs: [vessels.liquid_full_ck, vessels.hottest_ck]
#   message: "The liquid fills {part} at {have_ck}, and it can get as hot as {need_ck}"
#   action: "Fill the vessel less, keep it out of the sun, or leave it open to a vent line."
#   basis:
#     - document: ADR
#       edition: ""
#       clause: "4.2.1.9"
#       standing: published
#     - document: 49 CFR 173.301
#       edition: "CFR 2015 annual edition"
#       clause: "(a)(8)"
#       standing: published
package rules.expansion.vessel_liquid_full_when_hot

report contains {"subject": v.id, "part": v.id, "have_ck": v.liquid_full_ck, "need_ck": v.hottest_ck} if {
	some v in input.vessels
	v.closed
	v.holds_liquid
	v.is_source
	v.liquid_full_ck <= v.hottest_ck
}
