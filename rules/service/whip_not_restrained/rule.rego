# METADATA
# title: A gas hose under pressure has no whip restraint
# description: |
#   A gas hose that parts at a fitting flies about with a force that breaks bones. US mine law wants
#   restraints on high-pressure hose of 3/4 in and more; where that begins is taken as 7 bar by
#   practice.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: releases
#   scope: ["!restrained"]
#   needs: [releases.bore_mm, releases.pressure_kpa]
#   message: "A gas hose of run {run}, bore {bore_mm}, sees up to {pressure_kpa} and names no whip restraint"
#   action: "Fit whip restraints at both ends and at joints between hoses, and state their rating."
#   basis:
#     - document: 30 CFR 56.13021
#       edition: "CFR 2015 annual edition"
#       clause: ""
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.whip_not_restrained

report contains {"subject": r.id, "run": r.id, "bore_mm": r.bore_mm, "pressure_kpa": r.pressure_kpa} if {
	some r in input.releases
	not r.restrained

	# 3/4 in is sold as 19 mm.
	r.bore_mm >= 19
	r.pressure_kpa > 700
}
